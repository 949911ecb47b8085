// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_setup.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>
#include <algorithm>
#include <map>

#include "core/geometry/solve.h"
#include "core/shop/measured_words.h"
#include "tests/core/geometry/projects.h"
#include "tests/ui/papers/read_paper.h"
#include "tests/ui/papers/text_boxes.h"
#include "ui/paper_setting.h"

namespace kerfwall {
namespace {

/// A seat's and a back rest's openings on one panel for the garden workshop: bored corners, seven kerfs, a clamp hole.
Project twentySteps() {
    Project project = test::panelOf(600, 400);
    project.title = "Garden workshop, seat and back rest";
    project.panel.thickness = 18;
    project.lines = {test::offsetLine("A", Edge::Bottom, 90), test::offsetLine("B", Edge::Bottom, 190), test::offsetLine("C", Edge::Left, 100),
                     test::offsetLine("D", Edge::Left, 240),  test::offsetLine("E", Edge::Left, 330),   test::offsetLine("F", Edge::Left, 500),
                     test::offsetLine("G", Edge::Bottom, 260)};
    project.cutouts = {test::cutoutAt("seat", {{170, 140}}), test::cutoutAt("back", {{400, 140}, {400, 220}})};
    project.cutouts[0].corners = {{"A", "C", 15, ""}, {"B", "D", 20, ""}};
    ClampHole hole;
    hole.edge = Edge::Left;
    hole.at = 60;
    hole.diameter = 8;
    hole.depth = 50;
    project.clampHoles = {hole};
    project.use.byBush = true;
    project.use.bush = 24;
    project.use.bit = 12.7;
    project.use.depth = 9;
    return project;
}

class PaperSetup : public testing::Test {
  protected:
    QString write(const Project& project, const Paper& paper = {"a4", 210, 297}) {
        const Solved solved = solve(project);
        m_order = plan(project, solved);
        std::vector<Finding> found = findings(project, solved);
        if (m_longer) lengthen(m_order, found);
        const auto pages = setupPages(project, solved, found, m_order, paper);
        m_pages = pages.size();
        const auto pdf = pdfOf(pages, QStringLiteral("set-up sheet"));
        QFile file(m_dir.filePath(QStringLiteral("setup-sheet.pdf")));
        EXPECT_TRUE(pdf && file.open(QIODevice::WriteOnly));
        file.write(pdf.value_or(QByteArray()));
        if (qEnvironmentVariableIsSet("KERFWALL_PAPER_PICTURES")) {
            QFile::copy(file.fileName(), qEnvironmentVariable("KERFWALL_PAPER_PICTURES") + QStringLiteral("/setup%1.pdf").arg(s_number++));
        }
        return file.fileName();
    }

    /// The engine's sentences, each word half as long again: German and Swedish join words, they do not only take longer ones.
    static void lengthen(OrderOfWork& order, std::vector<Finding>& found) {
        for (WorkStep& step : order.steps) {
            for (std::string* text : {&step.text, &step.because}) *text = longWords(*text);
            for (std::string& caution : step.cautions) caution = longWords(caution);
        }
        for (Finding& finding : found) {
            finding.text = longWords(finding.text);
        }
    }
    static std::string longWords(const std::string& text) {
        QStringList words = QString::fromStdString(text).split(QLatin1Char(' '));
        for (QString& word : words) {
            if (word.size() > 4 && word.front().isLetter()) word.insert(1, QString((2 * word.size() + 4) / 5, QLatin1Char('n')));
        }
        return words.join(QLatin1Char(' ')).toStdString();
    }

    QTemporaryDir m_dir;
    bool m_longer = false;
    OrderOfWork m_order;
    std::size_t m_pages = 0;
    inline static int s_number = 0;
};

// Expected from: what was asked for: 20 steps on at most 4 pages of A4, their settings in figures of 8 mm.
TEST_F(PaperSetup, AJobOfTwentyStepsTakesFourPages) {
    for (const Units units : {Units::Millimetres, Units::Inches}) {
        Project project = twentySteps();
        project.units = units;
        const QString pdf = write(project);
        ASSERT_EQ(m_order.steps.size(), 20U);
        EXPECT_LE(m_pages, 4U);
        const QString text = closedUp(textOf(pdf));
        for (const WorkStep& step : m_order.steps) {
            // A text goes on under the picture or on the next page: word for word.
            for (const QString& word : QString::fromStdString(step.text).simplified().split(QLatin1Char(' '))) EXPECT_TRUE(text.contains(word)) << word.toStdString();
        }
        if (units == Units::Inches) continue;
        double largest = 0;
        for (const double size : sizesOf(pdf, QStringLiteral("186.8 mm"))) largest = std::max(largest, size);
        EXPECT_NEAR(largest, 8, 0.1);
    }
}

/// None in the margins of 12 mm, and beside the pictures none over another.
void expectWhole(const QString& pdf, double width, double height) {
    const QRectF inside(12 - 0.5, 12 - 0.5, width - 24 + 1, height - 24 + 1);
    auto boxes = textBoxesOf(pdf);
    for (const TextBox& box : boxes) EXPECT_TRUE(inside.contains(box.box)) << box.page << ": " << box.text.toStdString();
    constexpr double kPictures = 12 + 1.6 * 46;  // from the page's right edge
    std::erase_if(boxes, [&](const TextBox& box) { return box.page == 1 || box.box.right() > width - kPictures; });
    EXPECT_GT(boxes.size(), 50U);
    EXPECT_EQ(overlapIn(boxes), QString());
}

TEST_F(PaperSetup, NothingIsCutOffByLongNamesOrInLongWords) {
    const LongWords longer;
    m_longer = true;
    for (const Units units : {Units::Millimetres, Units::Inches}) {
        Project project = twentySteps();
        project.units = units;
        const auto named = [](const LineId& id) { return "the-line-named-" + id; };
        for (LayoutLine& line : project.lines) line.id = named(line.id);
        for (Cutout& cutout : project.cutouts) {
            for (BoredCorner& corner : cutout.corners) corner = {named(corner.first), named(corner.second), corner.radius, ""};
        }
        project.cutouts[0].id = "the-opening-in-the-seat";
        expectWhole(write(project), 210, 297);
        const QString pdf = write(project, {"ansi-c", 431.8, 558.8});
        expectWhole(pdf, 215.9, 279.4);
        const QString text = closedUp(textOf(pdf));
        for (const WorkStep& step : m_order.steps) {
            for (const QString& word : QString::fromStdString(step.text).simplified().split(QLatin1Char(' '))) EXPECT_TRUE(text.contains(word)) << word.toStdString();
        }
    }
}

// A law: what the record is answered stands on the sheet, word for word.
TEST_F(PaperSetup, WhatWasMeasuredAndItsAnswerStandOnTheSheet) {
    Project project = twentySteps();
    Record record;
    record.line = std::pair(LineId("A"), Edge::Bottom);
    record.measured = 90.4;
    project.record = {record};
    const QString text = closedUp(textOf(write(project)));
    const Solved solved = solve(project);
    const auto answers = measuredAnswers(project, solved, m_order);
    ASSERT_EQ(answers.size(), 1U);
    EXPECT_TRUE(text.contains(closedUp(QString::fromStdString(recordWords(project, record)))));
    EXPECT_TRUE(text.contains(closedUp(QString::fromStdString(answers[0].text)))) << answers[0].text;
}

// Expected from: a slot of 56 and a bit of 60: one stop, so the sheet does not look ready.
TEST_F(PaperSetup, StopsStandWhereTheWorkBeginsToo) {
    Project project = test::windowProject();
    EXPECT_FALSE(textOf(write(project)).contains(QStringLiteral("Not ready to cut")));
    test::setTools(project, 3.2, 60);
    EXPECT_TRUE(textOf(write(project)).contains(QStringLiteral("Not ready to cut: settle the stop")));
}

// Expected from: pencil. Bores of 20 touching A (90) and C (110) or D (290): 90 + 20 = 110 from the fence, 130 and 270 from
// the stop.
TEST(SettingFigures, ARowOfBoresHasAStopForEach) {
    Project project = test::windowProject();
    project.cutouts[0].corners = {{"A", "C", 20, ""}, {"A", "D", 20, ""}};
    const Solved solved = solve(project);
    const OrderOfWork order = plan(project, solved);
    const auto step = std::ranges::find(order.steps, Task::Bore, &WorkStep::task);
    ASSERT_NE(step, order.steps.end());
    std::map<std::string, std::string> figures;
    for (const SettingFigure& figure : settingFigures(project, solved, *step)) {
        figures[figure.caption.toStdString()] = figure.value.toStdString();
    }
    EXPECT_EQ(figures["Fence"], "110");
    EXPECT_EQ(figures["Stop, one after the other"], "130, 270");
    EXPECT_EQ(figures["Diameter"], "40");
}

// Expected from: pencil. A touches the bores: 90 + 4 x 0.15 = 90.6 for the first cut, its waste beyond; B, 56 higher with the
// waste between, 146 - 3.2 = 142.8 with four layers in.
TEST(SettingFigures, TheFirstCutAtABoreIsTheFigure) {
    Project project = test::windowProject();
    project.cutouts[0].corners = {{"A", "C", 20, ""}, {"B", "C", 20, ""}};
    const Solved solved = solve(project);
    const auto fenceOf = [&](const LineId& line) {
        for (const WorkStep& step : plan(project, solved).steps) {
            if (step.task != Task::Kerf || step.lines.front() != line) continue;
            for (const SettingFigure& figure : settingFigures(project, solved, step)) {
                if (figure.caption == QStringLiteral("Fence, first cut")) return figure.value.toStdString();
            }
        }
        return std::string();
    };
    EXPECT_EQ(fenceOf("A"), "90.6");
    EXPECT_EQ(fenceOf("B"), "142.8");
}

// Expected from: pencil. N2 runs from (430, 300) by (-2, -3); its wall from (370, 210) to (330, 150) lies 108.17 to 180.28 along it.
// The bit of 12.7 touches it 6.35 / tan(56.31 / 2) = 11.87 from the tip, so full depth lasts from 120.03 to 180.28, and a blade of
// 160, 6 deep, runs out over 30.40 at either end (facts.md 1).
TEST(SettingFigures, AStoppedCutTellsWhereTheBladeMeetsAndLeavesTheFace) {
    const Project project = sampleProject(QStringLiteral("stall_pennant.kerfwall"));
    const Solved solved = solve(project);
    const OrderOfWork order = plan(project, solved);
    std::map<std::string, std::string> figures;
    for (const WorkStep& step : order.steps) {
        if (step.task != Task::Kerf || step.lines.front() != "N2") continue;
        for (const SettingFigure& figure : settingFigures(project, solved, step)) figures[figure.caption.toStdString()] = figure.value.toStdString();
    }
    EXPECT_EQ(figures["Blade meets the face at"], "89.63");
    EXPECT_EQ(figures["Full depth from"], "120.03");
    EXPECT_EQ(figures["Full depth to"], "180.28");
    EXPECT_EQ(figures["Blade leaves the face at"], "210.67");
}

}  // namespace
}  // namespace kerfwall
