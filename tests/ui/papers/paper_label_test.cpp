// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_label.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>

#include "core/geometry/solve.h"
#include "core/shop/order_of_work.h"
#include "tests/core/geometry/projects.h"
#include "tests/ui/papers/read_paper.h"
#include "tests/ui/papers/text_boxes.h"
#include "ui/label_outline.h"
#include "ui/label_words.h"

namespace kerfwall {
namespace {

class PaperLabel : public testing::Test {
  protected:
    QString write(const PaperPage& page) {
        const auto pdf = pdfOf({page}, QStringLiteral("label"));
        QFile file(m_dir.filePath(QStringLiteral("label.pdf")));
        EXPECT_TRUE(pdf && file.open(QIODevice::WriteOnly));
        file.write(pdf.value_or(QByteArray()));
        return file.fileName();
    }
    QString label(const Project& project) {
        const Solved solved = solve(project);
        return write(labelPage(project, solved, findings(project, solved)));
    }

    QTemporaryDir m_dir;
};

/// A window with a bored corner, used with a bush and two cutters in turn.
Project boredWindow() {
    Project project = test::windowProject();
    project.title = "Window with one round corner";
    project.cutouts[0].corners = {{"A", "C", 15, ""}};
    project.use.byBush = true;
    project.use.bush = 24;
    project.use.bit = 12.7;
    project.use.depth = 9;
    project.use.cutters = {{12.7, "roughing", 5, ""}, {12.7, "", std::nullopt, ""}};
    return project;
}

// Expected from: pencil, facts.md 5 (the bit stands template + depth below the base) on a panel of 12: 12 + 5 = 17 and
// 12 + 9 = 21. The kerfs are 6 deep: unbroken from 6 to 12.
TEST_F(PaperLabel, TellsCuttersInTurnTheirPlaceBelowTheBaseAndTheBandOfBoredCorners) {
    const QString text = textOf(label(boredWindow()));
    for (const char* words : {"1. roughing, 12.7 mm: 5 mm deep, set 17 mm below the base", "2. Cutter 12.7 mm: 9 mm deep, set 21 mm below the base",
                              "bush only between 6 mm and 12 mm below the layout face", "Keep this side of the router towards you:", "Made on",
                              "the bush stands out 5 mm", "Window with one round corner", "Layout face on the work", "200 mm"}) {
        EXPECT_TRUE(text.contains(QString::fromUtf8(words))) << words << "\n" << text.toStdString();
    }
}

// Expected from: the trade. On a table no base is held; without a bore there is no band to keep to.
TEST_F(PaperLabel, SaysNothingOfTheBaseOnATableNorOfABandWithoutBores) {
    Project project = boredWindow();
    project.use.router = Router::Table;
    project.cutouts[0].corners.clear();
    const QString text = textOf(label(project));
    EXPECT_TRUE(text.contains(QStringLiteral("5 mm deep")));
    for (const char* words : {"below the base", "towards you", "Bored corners"}) EXPECT_FALSE(text.contains(QString::fromUtf8(words))) << words;
}

TEST_F(PaperLabel, LengthsAreInInchesWhereTheProjectIs) {
    Project project = boredWindow();
    project.units = Units::Inches;
    const QString text = textOf(label(project));
    // 17 mm = 0.669 in, 21 mm = 0.827 in. The bar: 0.6 of 15.7 in is 9.4, so 5 in.
    for (const char* words : {"0.669\" below", "0.827\" below", "5\""}) EXPECT_TRUE(text.contains(QString::fromUtf8(words))) << words << text.toStdString();
    EXPECT_FALSE(text.contains(QStringLiteral(" mm")));
}

/// All words stand on it, inside its border, none over another.
void expectWhole(const QString& pdf, const LabelWords& words) {
    const auto boxes = textBoxesOf(pdf);
    const QRectF border((105 - 98) / 2.0, (74 - 66.5) / 2.0, 98, 66.5);
    QString all;
    for (const TextBox& box : boxes) {
        EXPECT_TRUE(border.contains(box.box)) << box.text.toStdString();
        EXPECT_GT(box.box.height() / 0.7, 1.2) << "letters can be read: " << box.text.toStdString();
        all += closedUp(box.text);
    }
    EXPECT_EQ(overlapIn(boxes), QString());
    for (const QString& each : QStringList{words.title} + words.work + words.facts) EXPECT_TRUE(all.contains(closedUp(each))) << each.toStdString() << all.toStdString();
    EXPECT_FALSE(all.contains(QChar(0x2026)));
}

TEST_F(PaperLabel, NothingIsCutOffByLongNames) {
    Project project = boredWindow();
    project.title = "Fenster mit einer abgerundeten Ecke f\u00fcr die Gartenb\u00e4nke der zweiten Werkstatt, Fassung f\u00fcr Eichenholz";
    project.cutouts[0].id = "the-opening-for-one-hand";
    project.use.cutters[0].name = "Schruppfr\u00e4ser mit zwei Schneiden aus Hartmetall";
    project.panel.material = "birch-plywood-exterior-grade";
    const Solved solved = solve(project);
    const auto found = findings(project, solved);
    expectWhole(write(labelPage(project, solved, found)), labelWords(project, solved, found));
}

TEST_F(PaperLabel, NothingIsCutOffInWordsFourTenthsLonger) {
    const LongWords longer;
    for (const Units units : {Units::Millimetres, Units::Inches}) {
        Project project = boredWindow();
        project.units = units;
        const Solved solved = solve(project);
        Finding unsure;
        unsure.code = "unsure";
        unsure.severity = Severity::Stop;
        unsure.text = "The outline would not close.";
        expectWhole(write(labelPage(project, solved, {unsure})), labelWords(project, solved, {unsure}));
    }
}

// Expected from: pencil. A4 less 6.35 all round is 197.3 x 284.3: two labels of 98 and four of 66.5. Letter: 203.2 x
// 266.7: two, four. A3 upright 284.3 x 407.3: 2 by 6; lying 407.3 x 284.3: 4 by 4, more. A label's own page holds one only
// without a margin, so none.
TEST(LabelGrid, TakesAsManyAsThePaperHolds) {
    EXPECT_EQ(labelGrid({"a4", 210, 297}), (LabelGrid{2, 4, false}));
    EXPECT_EQ(labelGrid({"letter", 215.9, 279.4}), (LabelGrid{2, 4, false}));
    EXPECT_EQ(labelGrid({"a3", 297, 420}), (LabelGrid{4, 4, true}));
    EXPECT_EQ(labelGrid({"tiny", 105, 74}), (LabelGrid{0, 0, false}));
}

TEST_F(PaperLabel, ASheetOfLabelsCarriesEightOnA4) {
    const Project project = boredWindow();
    const Solved solved = solve(project);
    const QString text = textOf(write(labelSheet(project, solved, {}, {"a4", 210, 297})));
    EXPECT_EQ(text.count(QStringLiteral("Made on")), 8);
}

// Expected from: 1, 2 and 5 times a power of ten.
TEST(RoundLength, IsTheLongestRoundOneThatFits) {
    EXPECT_DOUBLE_EQ(roundLength(240), 200);
    EXPECT_DOUBLE_EQ(roundLength(500), 500);
    EXPECT_DOUBLE_EQ(roundLength(199.9), 100);
    EXPECT_DOUBLE_EQ(roundLength(0.7), 0.5);
}

// Expected from: the panel. On one of 400 x 250 the bar of 200 is half as long as the panel's picture is wide.
TEST(LabelOutlines, TheBarHasThePanelsScale) {
    const Project project = test::windowProject();
    const LabelOutline outline = labelOutline(project, solve(project), QRectF(0, 0, 32, 40));
    EXPECT_NEAR(outline.bar.length(), outline.panel.width() / 2, 1e-9);
    EXPECT_NEAR(outline.panel.width() / outline.panel.height(), 1.6, 1e-9);
    // Kerfs of 3.2 and a bit of 12.7 leave the window as drawn: 180 x 56 of 400 x 250, at 110 from the left.
    EXPECT_NEAR(outline.openings.boundingRect().width() / outline.panel.width(), 0.45, 1e-6);
    EXPECT_NEAR((outline.openings.boundingRect().left() - outline.panel.left()) / outline.panel.width(), 0.275, 1e-6);
}

}  // namespace
}  // namespace kerfwall
