// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_setup.h"

#include <algorithm>
#include <memory>
#include <utility>

#include "core/shop/measured_words.h"
#include "ui/paper_column.h"
#include "ui/paper_facts.h"
#include "ui/paper_pattern.h"
#include "ui/paper_step.h"
#include "ui/paper_views.h"

namespace kerfwall {
namespace {

// mm.
constexpr double kMargin = 12;
constexpr double kViewsShare = 0.34; // of the page's height, at most
constexpr double kViewsUnit = 0.8;   // both views are drawn a little finer than the pattern
constexpr double kIndent = 13;
const Lettering kTitle{7, true};
const Lettering kHeading{5, true};
const Lettering kBody{3};
const Lettering kSmall{2.6};
const Lettering kUnsure{10, true};
const Lettering kStopsFirst{4.2, true};

class SetupSheet {
  public:
    SetupSheet(const Project& project, const Solved& solved, const std::vector<Finding>& findings,
               const OrderOfWork& order, const Paper& paper, double pictures)
        : m_project(project),
          m_solved(solved),
          m_findings(findings),
          m_order(order),
          m_pictures(pictures),
          m_column(paper.width, paper.height, kMargin),
          m_pageHeight(paper.height) {}

    std::vector<PaperPage> pages() {
        addHead();
        addUnsure();
        addViews();
        addCautions();
        addFindings();
        addRecord();
        addSteps();
        return m_column.pages(PaperWords::tr("%1 \u00b7 set-up sheet").arg(titleOf(m_project)));
    }

  private:
    void addHead() {
        m_column.paragraph(titleOf(m_project), kTitle);
        m_column.space(1);
        for (const QString& fact : projectFacts(m_project, m_solved)) m_column.paragraph(fact, kBody);
        m_column.space(3);
    }

    void addUnsure() {
        const QStringList sentences = unsureSentences(m_findings);
        if (sentences.isEmpty()) return;
        Lettering large = kUnsure;
        large.colour = m_palette.stop;
        m_column.paragraph(PaperWords::tr("Unsure: do not cut before it is settled"), large);
        for (const QString& sentence : sentences) m_column.paragraph(sentence, kHeading);
        m_column.space(3);
    }

    void addViews() {
        const QRectF frame(m_column.left(), 0, m_column.width(), m_pageHeight * kViewsShare);
        const auto views =
            std::make_shared<TwoViews>(twoViews(m_project, m_solved, m_findings, frame, kViewsUnit));
        m_column.block(views->frame.height(), [views, palette = m_palette](QPainter& painter, double top) {
            painter.save();
            painter.translate(0, top);
            paintTwoViews(painter, *views, palette);
            painter.restore();
        });
        m_column.space(3);
    }

    /// Once, before any step: what comes first everywhere, then what the steps say, each sentence with its steps.
    void addCautions() {
        m_column.keepTogether(30);
        heading(PaperWords::tr("Cautions"));
        const QStringList cautions{
            PaperWords::tr(
                "The machine's manual, your local rules and your training come first; where they say "
                "otherwise, follow them and not this sheet."),
            PaperWords::tr(
                "Saw part-depth on the bench only where your rules allow it. Unplug a machine to set it. "
                "Refit the riving knife and guard after part-depth work."),
            PaperWords::tr(
                "Use a push stick, keep both hands clear of the face above the hidden blade, and wait for "
                "the blade to stop."),
            PaperWords::tr(
                "Protect eyes, ears and lungs, and draw the dust off; dust limits differ by country."),
        };
        for (const QString& caution : cautions) bullet(caution, kBody);
        for (const auto& [steps, sentences] : cautionsBySteps()) {
            const QString which = steps.size() == 1 ? PaperWords::tr("Step %1") : PaperWords::tr("Steps %1");
            bullet(which.arg(numbersInWords(steps)) + PaperWords::tr(": %1").arg(sentences.join(QLatin1Char(' '))), kSmall);
        }
        m_column.space(4);
    }

    using StepCautions = std::vector<std::pair<std::vector<int>, QStringList>>;
    /// Sentences that hold for the same steps together, in the order in which they first apply.
    [[nodiscard]] StepCautions cautionsBySteps() const {
        std::vector<std::pair<std::string, std::vector<int>>> all;
        for (const WorkStep& step : m_order.steps) {
            for (const std::string& caution : step.cautions) {
                auto known = std::ranges::find(all, caution, [](const auto& each) { return each.first; });
                if (known == all.end()) known = all.insert(all.end(), {caution, {}});
                known->second.push_back(step.number);
            }
        }
        StepCautions grouped;
        for (const auto& [caution, steps] : all) {
            auto group = std::ranges::find(grouped, steps, [](const auto& each) { return each.first; });
            if (group == grouped.end()) group = grouped.insert(grouped.end(), {steps, {}});
            group->second << QString::fromStdString(caution);
        }
        return grouped;
    }

    void addFindings() {
        m_column.keepTogether(20);
        heading(PaperWords::tr("Mind before cutting"));
        if (m_findings.empty()) m_column.paragraph(PaperWords::tr("Nothing was found."), kBody);
        for (std::size_t i = 0; i < m_findings.size(); ++i) addFinding(m_findings[i], i + 1);
        m_column.space(4);
    }

    void addFinding(const Finding& finding, std::size_t number) {
        const QString text = severityWords(finding.severity) + QString::fromStdString(finding.text);
        m_column.keepTogether(std::max(7.0, m_column.paragraphHeight(text, kBody, kIndent)));
        m_column.block(0, [=, x = m_column.left() + 4, palette = m_palette](QPainter& painter, double top) {
            paintSign(painter, {x, top + 2.6}, 5.4, finding.severity, QString::number(number), palette);
        });
        m_column.paragraph(text, kBody, kIndent);
        m_column.space(2);
    }

    /// What was measured so far and what the plan answers.
    void addRecord() {
        if (m_project.record.empty()) return;
        m_column.keepTogether(20);
        heading(PaperWords::tr("Measured so far"));
        for (const MeasuredAnswer& answer : measuredAnswers(m_project, m_solved, m_order)) {
            const std::string entry = recordWords(m_project, m_project.record[answer.record]);
            bullet(PaperWords::tr("%1: %2").arg(QString::fromStdString(entry), QString::fromStdString(answer.text)), kBody);
        }
        m_column.space(4);
    }

    void addSteps() {
        m_column.keepTogether(30);
        heading(PaperWords::tr("Order of work"));
        m_column.paragraph(setupCount(), kBody);
        addStopsFirst();
        m_column.paragraph(patternWords(), kSmall);
        m_column.space(2);
        for (std::size_t i = 0; i < m_order.steps.size(); ++i) addPaperStep(m_column, m_project, m_solved, m_order, i, m_pictures);
    }

    /// What a printed pattern takes the place of, and how it is put on.
    [[nodiscard]] QString patternWords() const {
        const QString face = m_project.printing.face == Face::Back ? PaperWords::tr("the back, for which it is mirrored")
                                                                   : PaperWords::tr("the layout face");
        return PaperWords::tr("With the printed pattern: check its bars with a rule, join its sheets mark on mark, and glue it on %1, its corner "
                              "and edges on the panel’s; wrap the edge strips over the edges. Then the marks stand already: check them where a step "
                              "says to mark.")
            .arg(face);
    }

    /// What stops the work stands where the work begins too.
    void addStopsFirst() {
        const auto stops = std::ranges::count(m_findings, Severity::Stop, &Finding::severity);
        if (stops == 0) return;
        m_column.paragraph(stops == 1 ? PaperWords::tr("Not ready to cut: settle the stop under \u201cMind before cutting\u201d first.")
                                      : PaperWords::tr("Not ready to cut: settle the %1 stops under \u201cMind before cutting\u201d first.").arg(stops),
                           kStopsFirst);
    }

    [[nodiscard]] QString setupCount() const {
        const QString count = m_order.setups == 1
                                  ? PaperWords::tr("1 set-up of the saws")
                                  : PaperWords::tr("%1 set-ups of the saws").arg(m_order.setups);
        return m_order.setups == m_order.lowerBound
                   ? PaperWords::tr("%1, the fewest there can be.").arg(count)
                   : PaperWords::tr("%1.").arg(count);
    }

    void heading(const QString& text) {
        m_column.paragraph(text, kHeading);
        m_column.space(1);
    }

    void bullet(const QString& text, const Lettering& lettering) {
        m_column.keepTogether(m_column.paragraphHeight(text, lettering, 5));
        m_column.block(0, [x = m_column.left(), lettering](QPainter& painter, double top) {
            writeText(painter, {x, top + lettering.height}, QStringLiteral("\u2013"), lettering);
        });
        m_column.paragraph(text, lettering, 5);
        m_column.space(0.6);
    }

    const Project& m_project;
    const Solved& m_solved;
    const std::vector<Finding>& m_findings;
    const OrderOfWork& m_order;
    double m_pictures;
    PaperColumn m_column;
    double m_pageHeight;
    Palette m_palette = paletteOf(PaletteKind::Paper);
};

}  // namespace

std::vector<PaperPage> setupPages(const Project& project, const Solved& solved,
                                  const std::vector<Finding>& findings, const OrderOfWork& order,
                                  const Paper& paper) {
    const bool isInches = paper.name == "letter" || paper.name == "tabloid" || paper.name.starts_with("ansi-");  // paper sold by the inch
    const Paper sheet = isInches ? Paper{"letter", 215.9, 279.4} : Paper{"a4", 210, 297};
    // The largest pictures with which it still fits on few pages.
    constexpr std::size_t kFewPages = 4;
    constexpr std::size_t kManySteps = 24;
    for (const double pictures : {1.6, 1.3}) {
        if (order.steps.size() > kManySteps) break;
        std::vector<PaperPage> pages = SetupSheet(project, solved, findings, order, sheet, pictures).pages();
        if (pages.size() <= kFewPages) return pages;
    }
    return SetupSheet(project, solved, findings, order, sheet, 1).pages();
}

}  // namespace kerfwall
