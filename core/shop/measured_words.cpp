// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/measured_words.h"

#include <cmath>

#include "core/shop/finding_words.h"
#include "core/shop/step_text.h"

namespace kerfwall {

namespace {

/// What was measured, as a sentence's subject.
std::string subjectOf(const Record& record) {
    if (record.line) {
        return "Wall " + record.line->first;
    }
    if (record.between) {
        return "The opening between " + record.between->first + " and " + record.between->second;
    }
    return "The bore between " + record.bore->first + " and " + record.bore->second;
}

std::string layersText(const Project& project, const MoveOut& out, const Tape& tape) {
    if (out.layers == 0) {
        return " A layer of tape is too thick for that.";
    }
    const std::string count = std::to_string(out.layers) + (out.layers == 1 ? " layer of " : " layers of ") +
                              lengthWords(project, tape.thickness) + " tape";
    const std::string where = out.isStop ? "panel and stop" : "panel and fence";
    std::string text = out.addsLayers ? " Or leave it where it stands and lay " + count + " between " + where
                                      : " Or, where it was set up with tape between " + where + ", peel " + count + " off";
    if (out.leaves > kOnLine) {
        text += ", which leaves " + lengthWords(project, out.leaves);
    }
    return text + ".";
}

std::string moveOutText(const Project& project, const MoveOut& out, const Tape& tape) {
    if (!out.shift) {
        return " Cut wall " + out.line + " again to its marks: " + lengthWords(project, out.by) +
               " of waste still stands before its line.";
    }
    const std::string what = out.isStop ? "stop" : "fence";
    const double was = *out.setting - *out.shift;
    return " Move the " + what + " " + lengthWords(project, std::abs(*out.shift)) +
           (*out.shift < 0 ? " nearer to the blade, " : " farther from the blade, ") + "from " + sizeText(project, was) +
           " to " + sizeText(project, *out.setting) + " by the scale it was set by, and cut wall " + out.line + " again." +
           layersText(project, out, tape);
}

std::string costText(const Project& project, const SizeCost& cost) {
    std::string text = " Left so, the size between " + cost.first + " and " + cost.second + " comes out " +
                       sizeText(project, cost.comes) + ", " + lengthWords(project, cost.comes - cost.drawn) + " over ";
    return text + (cost.keeps ? "(within class " + classWord(*cost.keeps) + " of ISO 2768-1)." : "(outside ISO 2768-1).");
}

std::string boreText(const Project& project, const MeasuredAnswer& answer, const std::string& subject) {
    const std::string off = lengthWords(project, answer.off);
    return answer.stands == Stands::Short
               ? subject + " is " + off + " too small: bring it out by the jig or by hand, never past its round."
               : subject + " is " + off + " too large and stays so: lay the kerfs tangent to it as it is, and fair the round by hand.";
}

std::string nothingText(const Record& record) {
    if (record.line) {
        return "From the " + edgeWord(record.line->second) + " edge nothing can be said of line " + record.line->first +
               ": it has no wall along that edge, or one on each side. Measure across the opening.";
    }
    if (record.between) {
        return "Walls " + record.between->first + " and " + record.between->second +
               " do not face each other across an opening: measure from an edge.";
    }
    return "No corner between " + record.bore->first + " and " + record.bore->second + " is bored.";
}

}  // namespace

std::string recordWords(const Project& project, const Record& record) {
    const std::string size = sizeText(project, record.measured);
    if (record.line) {
        return record.line->first + ", " + size + " from the " + edgeWord(record.line->second) + " edge";
    }
    if (record.between) {
        return record.between->first + " to " + record.between->second + ", " + size;
    }
    return "bore at " + record.bore->first + " and " + record.bore->second + ", " + size;
}

std::string measuredText(const Project& project, const MeasuredAnswer& answer, const Tape& tape) {
    const Record& record = project.record.at(answer.record);
    const std::string subject = subjectOf(record);
    if (answer.isPassed) {
        return subject + " was measured again since.";
    }
    if (!answer.stands) {
        return nothingText(record);
    }
    if (answer.stands == Stands::OnLine) {
        return subject + (record.line ? " stands on its line." : " has its size.");
    }
    if (record.bore) {
        return boreText(project, answer, subject);
    }
    const std::string off = lengthWords(project, answer.off);
    std::string text;
    if (record.line) {
        text = subject + " stands " + off + (answer.stands == Stands::Short ? " short of its line." : " past its line and stays there.");
    } else {
        text = subject + " is " + off + (answer.stands == Stands::Short ? " too small." : " too large; nothing can be put back.");
    }
    if (answer.moveOut) {
        text += moveOutText(project, *answer.moveOut, tape);
    }
    for (const SizeCost& cost : answer.costs) {
        text += costText(project, cost);
    }
    return text;
}

}  // namespace kerfwall
