// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_svg.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QImage>
#include <QImageReader>
#include <QPainter>
#include <QSvgRenderer>
#include <QTemporaryDir>

#include "core/geometry/solve.h"
#include "tests/core/geometry/projects.h"
#include "tests/ui/papers/read_paper.h"
#include "ui/paper_pattern.h"

namespace kerfwall {
namespace {

constexpr int kPerMm = 10;  // pixels

QByteArray patternSvg(const Project& project) {
    return svgOf(patternDrawing(project, solve(project)), project.panel.width, project.panel.height, QStringLiteral("Pattern"));
}

QImage byOneRenderer(const QByteArray& svg, QSize size) {
    QImage image(size, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    QSvgRenderer renderer(svg);
    EXPECT_TRUE(renderer.isValid());
    renderer.render(&painter, QRectF(QPointF(), QSizeF(size)));
    return image.convertToFormat(QImage::Format_Grayscale8);
}

QImage byAnotherRenderer(const QByteArray& svg, QSize size) {
    const QTemporaryDir dir;
    QFile file(dir.filePath(QStringLiteral("pattern.svg")));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(svg);
    file.close();
    const QByteArray png = outputOf(QStringLiteral("rsvg-convert"), {QStringLiteral("-w"), QString::number(size.width()), QStringLiteral("-h"),
                                                                     QString::number(size.height()), QStringLiteral("-b"), QStringLiteral("white"), file.fileName()});
    return QImage::fromData(png, "PNG").convertToFormat(QImage::Format_Grayscale8);
}

/// Places whose grey in `one` no pixel of `other` up to one pixel away reaches: dark ones that have no dark neighbour,
/// with room for how smoothly a line's edge is drawn.
int strayPixels(const QImage& one, const QImage& other) {
    constexpr int kDark = 100;
    constexpr int kNearlyDark = 170;
    int strays = 0;
    for (int y = 1; y + 1 < one.height(); ++y) {
        for (int x = 1; x + 1 < one.width(); ++x) {
            if (one.constScanLine(y)[x] >= kDark) continue;
            bool found = false;
            for (int row = y - 1; row <= y + 1 && !found; ++row) {
                for (int column = x - 1; column <= x + 1 && !found; ++column) found = other.constScanLine(row)[column] < kNearlyDark;
            }
            strays += found ? 0 : 1;
        }
    }
    return strays;
}

int darkPixels(const QImage& image) {
    int dark = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) dark += image.constScanLine(y)[x] < 100 ? 1 : 0;
    }
    return dark;
}

// Expected from: two libraries that know nothing of one another draw the same file at 10 pixels to a mm; whatever one
// draws dark the other has within a pixel.
TEST(PaperSvg, TwoRenderersDrawTheSamePictureWithinAPixel) {
    QImageReader::setAllocationLimit(512);  // megabytes: a panel of 700 x 500 is 7000 x 5000 pixels
    for (const QString& name : {QStringLiteral("crate_end.kerfwall"), QStringLiteral("stall_pennant.kerfwall"), QStringLiteral("round_window.kerfwall"),
                                QStringLiteral("bench_leg.kerfwall"), QStringLiteral("mind_these.kerfwall")}) {
        const Project project = sampleProject(name);
        const QSize size(qRound(project.panel.width * kPerMm), qRound(project.panel.height * kPerMm));
        const QByteArray svg = patternSvg(project);
        const QImage one = byOneRenderer(svg, size);
        const QImage other = byAnotherRenderer(svg, size);
        ASSERT_EQ(other.size(), size) << name.toStdString();
        EXPECT_GT(darkPixels(one), 10000);
        EXPECT_EQ(strayPixels(one, other), 0) << name.toStdString();
        EXPECT_EQ(strayPixels(other, one), 0) << name.toStdString();
        if (qEnvironmentVariableIsSet("KERFWALL_SVG_PICTURES")) {
            one.save(qEnvironmentVariable("KERFWALL_SVG_PICTURES") + QLatin1Char('/') + name + QStringLiteral(".one.png"));
            other.save(qEnvironmentVariable("KERFWALL_SVG_PICTURES") + QLatin1Char('/') + name + QStringLiteral(".other.png"));
        }
    }
}

// Expected from: the file's size in mm and its viewBox, by the standard: 1 mm is 96 / 25.4 px, so 400 mm are 1512 px at
// the standard's own density, and 10 times that many mm with the width asked for.
TEST(PaperSvg, ItsSizeIsInRealMillimetres) {
    const QByteArray svg = patternSvg(test::windowProject());
    EXPECT_TRUE(svg.contains("width=\"400mm\" height=\"250mm\" viewBox=\"0 0 400 250\"")) << svg.left(400).toStdString();
    const QTemporaryDir dir;
    QFile file(dir.filePath(QStringLiteral("pattern.svg")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(svg);
    file.close();
    const QImage image = QImage::fromData(outputOf(QStringLiteral("rsvg-convert"), {QStringLiteral("-d"), QStringLiteral("96"), QStringLiteral("-p"), QStringLiteral("96"), file.fileName()}), "PNG");
    EXPECT_NEAR(image.width(), 400 * 96 / 25.4, 1);
    EXPECT_NEAR(image.height(), 250 * 96 / 25.4, 1);
}

// Expected from: the layers' names in the contract, each once; a rounded corner is SVG's arc and no chain of sides.
TEST(PaperSvg, NamesItsLayersAndKeepsArcs) {
    const QByteArray svg = patternSvg(test::windowProject());
    for (const char* id : {"lines", "kerfs", "template", "work", "marks"}) EXPECT_EQ(svg.count(QByteArray("<g id=\"") + id + "\""), 1) << id;
    EXPECT_TRUE(svg.contains(" A 6.35 6.35 0 0 "));
}

}  // namespace
}  // namespace kerfwall
