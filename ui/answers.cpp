// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/answers.h"

#include <utility>

#include "core/geometry/marking.h"
#include "core/geometry/solve.h"
#include "core/strength/flex.h"

namespace kerfwall {

AnswersPtr answersTo(Project project) {
    auto answers = std::make_shared<Answers>();
    answers->project = std::move(project);
    answers->solved = solve(answers->project);
    answers->findings = findings(answers->project, answers->solved);
    answers->order = plan(answers->project, answers->solved);
    return answers;
}

AnswersPtr answersTo(const Answers& before, const Project& next) {
    return answersTo(carryCutouts(before.project, before.solved, next));
}

AnswersPtr answersWithFlex(const Answers& answers) {
    auto whole = std::make_shared<Answers>(answers);
    whole->solved = withFlex(whole->project, std::move(whole->solved));
    whole->findings = findings(whole->project, whole->solved);
    whole->hasFlex = true;
    return whole;
}

}  // namespace kerfwall
