// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/svg_outline.h"

#include <gtest/gtest.h>

#include <random>

#include "core/geometry/clip.h"

namespace kerfwall {
namespace {

QByteArray svg(const QByteArray& head, const QByteArray& body) { return "<svg xmlns=\"http://www.w3.org/2000/svg\" " + head + ">" + body + "</svg>"; }

void expectNear(const std::expected<std::vector<Point>, QString>& read, const std::vector<Point>& corners) {
    ASSERT_TRUE(read) << read.error().toStdString();
    ASSERT_EQ(read->size(), corners.size());
    for (std::size_t i = 0; i < corners.size(); ++i) EXPECT_LT(distance((*read)[i], corners[i]), 1e-6) << i;
}

// Expected from: W3C CSS Values 3: 100 mm are 377.952756 px. A square of them, 20 px from the left of a picture 480 px high
// and 20 px from its foot (480 - 82.047244 - 377.952756 = 20): 20 px are 5.291667 mm.
TEST(SvgOutline, ASquareOfAHundredMillimetresInPxComesOutSo) {
    const double low = 20 * 25.4 / 96;
    const double high = low + 100;
    const auto read = readSvgOutline(svg("width=\"480\" height=\"480\"", "<rect x=\"20\" y=\"82.0472440944882\" width=\"377.952755905512\" height=\"377.952755905512\"/>"));
    expectNear(read, {{low, high}, {high, high}, {high, low}, {low, low}});
}

// Expected from: pencil. A viewBox in mm; the group moves by (10, 20), the path is doubled: (5, 5) goes to (20, 30), 170
// above the foot of 200.
TEST(SvgOutline, GroupsMoveWhatIsInThem) {
    const auto read = readSvgOutline(svg("width=\"300mm\" height=\"200mm\" viewBox=\"0 0 300 200\"",
                                         "<title>t</title><g transform=\"translate(10 20)\"><g><path transform=\"scale(2)\" d=\"M5 5h10v20z\"/></g></g>"));
    expectNear(read, {{20, 170}, {40, 170}, {40, 130}});
}

// Expected from: pencil: all corners of a circle of 50 lie 50 from its middle, their sides within 0.05 of it. In a
// picture whose unit is 10 mm the tolerance is the same.
TEST(SvgOutline, ACircleStaysWithinTheToleranceInMillimetres) {
    const auto read = readSvgOutline(svg("width=\"30cm\" height=\"20cm\" viewBox=\"0 0 30 20\"", "<circle cx=\"10\" cy=\"10\" r=\"5\"/>"));
    ASSERT_TRUE(read) << read.error().toStdString();
    for (std::size_t i = 0; i < read->size(); ++i) {
        const Point next = (*read)[(i + 1) % read->size()];
        EXPECT_NEAR(distance((*read)[i], {100, 100}), 50, 1e-9);
        EXPECT_GE(distance(0.5 * ((*read)[i] + next), {100, 100}), 50 - 0.05);
    }
    EXPECT_LT(read->size(), 80U) << "no finer than needed";
}

TEST(SvgOutline, PassesOverWhatIsNotShown) {
    const QByteArray hidden = "<defs><rect width=\"1\" height=\"1\"/></defs><rect style=\"display: none\" width=\"1\" height=\"1\"/><text>a</text>";
    expectNear(readSvgOutline(svg("width=\"10mm\" height=\"10mm\" viewBox=\"0 0 10 10\"", hidden + "<polygon points=\"0,0 10,0 10,10\"/>")), {{0, 10}, {10, 10}, {10, 0}});
}

TEST(SvgOutline, RefusesWithTheLineAndTheRemedy) {
    const QByteArray mm = "width=\"10mm\" height=\"10mm\" viewBox=\"0 0 10 10\"";
    const std::vector<std::pair<QByteArray, QString>> cases{
        {"", QStringLiteral("no SVG picture")},
        {"<html/>", QStringLiteral("no SVG picture")},
        {svg(mm, ""), QStringLiteral("no outline")},
        {svg(mm, "\n<rect width=\"1\" height=\"1\"/>\n<rect width=\"2\" height=\"2\"/>"), QStringLiteral("Line 3 of the file: The picture holds several outlines")},
        {svg(mm, "\n<path d=\"M0 0h5v5\"/>"), QStringLiteral("Line 2 of the file: The path is open")},
        {svg(mm, "<g transform=\"skewX(5)\"><rect width=\"1\" height=\"1\"/></g>"), QStringLiteral("skewX")},
        {svg(mm, "<rect style=\"transform:scale(2)\" width=\"1\" height=\"1\"/>"), QStringLiteral("stands in a style")},
        {svg(mm, "<use href=\"#a\"/>"), QStringLiteral("save the file with plain paths")},
        {svg("width=\"100%\" height=\"100%\" viewBox=\"0 0 1 1\"", "<rect width=\"1\" height=\"1\"/>"), QStringLiteral("width is \u201c100%\u201d")},
        {svg(mm, "<rect width=\"1\" height=\"1\">"), QStringLiteral("no sound XML")},
    };
    for (const auto& [bytes, words] : cases) {
        const auto read = readSvgOutline(bytes);
        ASSERT_FALSE(read) << bytes.toStdString();
        EXPECT_TRUE(read.error().contains(words)) << bytes.toStdString() << read.error().toStdString();
        EXPECT_TRUE(read.error().endsWith(QLatin1Char('.')));
    }
    EXPECT_FALSE(openSvgOutline(QStringLiteral("/no/such/file.svg")));
}

// A law: broken pictures give an outline or a sentence. Seed 2.
TEST(SvgOutline, BrokenPicturesGiveAnOutlineOrASentence) {
    std::mt19937 dice(2);
    const QByteArray good = svg("width=\"300mm\" height=\"200mm\" viewBox=\"0 0 300 200\"", "<g transform=\"rotate(3)\"><path d=\"M5 5h10v20a4 4 0 0 1 -3 2z\"/></g>");
    int sound = 0;
    for (int i = 0; i < 4000; ++i) {
        QByteArray bytes = good;
        for (int change = 0; change < 2; ++change) {
            const auto at = static_cast<qsizetype>(dice() % static_cast<unsigned>(bytes.size()));
            if (dice() % 2 == 0) bytes[at] = static_cast<char>(dice() % 256);
            else bytes.remove(at, 1 + static_cast<qsizetype>(dice() % 9));
        }
        const auto read = readSvgOutline(bytes);
        if (read) ++sound;
        else EXPECT_FALSE(read.error().isEmpty());
    }
    EXPECT_GT(sound, 50);
}

}  // namespace
}  // namespace kerfwall
