// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/painter.h"

#include <gtest/gtest.h>

#include <QImage>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace kerfwall {
namespace {

OutlineLoop arcLoop(double radius, double sweep, Turn turn) {
    OutlinePiece arc;
    arc.isArc = true;
    arc.radius = radius;
    arc.turn = turn;
    const double end = turn == Turn::Left ? sweep : -sweep;
    arc.from = {radius, 0};
    arc.to = {radius * std::cos(end), radius * std::sin(end)};
    return {arc};
}

QPointF onCubic(QPointF a, QPointF b, QPointF c, QPointF d, double t) {
    const double u = 1 - t;
    return u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
}

/// The farthest any place of a path's cubics strays from the circle round the origin.
double strayOf(const QPainterPath& path, double radius) {
    double stray = 0;
    for (int i = 1; i + 2 < path.elementCount(); ++i) {
        if (path.elementAt(i).type != QPainterPath::CurveToElement) continue;
        for (int k = 0; k <= 50; ++k) {
            const QPointF place = onCubic(path.elementAt(i - 1), path.elementAt(i), path.elementAt(i + 1),
                                          path.elementAt(i + 2), k / 50.0);
            stray = std::max(stray, std::abs(std::hypot(place.x(), place.y()) - radius));
        }
    }
    return stray;
}

// Expected from: pencil. A cubic over 30 degrees strays 0.373 millionths of its radius: 4.85 µm at 13 m.
TEST(Painter, KeepsArcsWithin5MicrometresUpTo13Metres) {
    for (const Turn turn : {Turn::Left, Turn::Right}) {
        for (const double degrees : {3.0, 90.0, 200.0, 359.0}) {
            const auto loop = arcLoop(13000, degrees * std::numbers::pi / 180, turn);
            const QPainterPath path = pathOf({loop}, paperView({0, 0}));
            EXPECT_LT(strayOf(path, 13000), 0.005) << degrees;
            const QPainterPath::Element end = path.elementAt(path.elementCount() - 2);
            EXPECT_NEAR(std::hypot(end.x - loop[0].to.x, -end.y - loop[0].to.y), 0, 1e-6)
                << "ends where it should";
        }
    }
}

// Expected from: pencil. A half circle that turns left from (r, 0) passes through (0, r), above; with the
// page's y down that is -r.
TEST(Painter, TurnsArcsTheWayTheyTurn) {
    const QPainterPath left = pathOf({arcLoop(10, std::numbers::pi, Turn::Left)}, paperView({0, 0}));
    EXPECT_NEAR(left.boundingRect().top(), -10, 1e-5);
    EXPECT_NEAR(left.boundingRect().bottom(), 0, 1e-5);
    const QPainterPath right = pathOf({arcLoop(10, std::numbers::pi, Turn::Right)}, paperView({0, 0}));
    EXPECT_NEAR(right.boundingRect().bottom(), 10, 1e-5);
}

// Expected from: pencil. Origin at (100, 500), 2 and 3 device units for a mm, y up in the drawing.
TEST(Painter, PlacesADrawingOnTheDevice) {
    const View view{{100, 500}, 2, 3, 1, 1, false};
    EXPECT_EQ(view.toDevice({10, 20}), QPointF(120, 440));
    const Point back = view.toDrawing({120, 440});
    EXPECT_DOUBLE_EQ(back.x, 10);
    EXPECT_DOUBLE_EQ(back.y, 20);
}

int darkRows(Ink ink) {
    QImage image(40, 40, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    Drawing drawing;
    drawing.marks.emplace_back(Stroke{ink, {-1, -2}, {20, -2}, "A"});
    paintDrawing(painter, drawing, paletteOf(PaletteKind::Paper), screenView({0, 0}, 10));
    painter.end();
    int rows = 0;
    for (int y = 0; y < image.height(); ++y) rows += qGray(image.pixel(20, y)) < 100 ? 1 : 0;
    return rows;
}

// Expected from: ISO 128, wide lines are twice as wide as narrow ones; on the screen 2 pixels and 1.
TEST(Painter, DrawsWideLinesTwiceAsWideAsNarrowOnes) {
    EXPECT_EQ(darkRows(Ink::LayoutLine), 1);
    EXPECT_EQ(darkRows(Ink::PanelEdge), 2);
}

// Expected from: WCAG 2.2, 1.4.3 (text 4.5 : 1) and 1.4.11 (lines and signs 3 : 1).
TEST(Palette, StandsOutFromTheGroundAndTheBoard) {
    for (const PaletteKind kind : {PaletteKind::Light, PaletteKind::Dark, PaletteKind::Paper}) {
        const Palette palette = paletteOf(kind);
        for (const QColor& behind : {palette.ground, palette.board}) {
            EXPECT_GE(contrast(palette.text, behind), 4.5);
            EXPECT_GE(contrast(palette.faint, behind), 4.5);
            for (const QColor& line :
                 {palette.ink, palette.work, palette.tool, palette.stop, palette.care, palette.note}) {
                EXPECT_GE(contrast(line, behind), 3.0)
                    << line.name().toStdString() << " on " << behind.name().toStdString();
            }
        }
        EXPECT_GE(contrast(palette.ink, palette.kerf), 3.0);
    }
}

// Expected from: WCAG 2.2: white on black is 21 : 1; #777777 on white 4.48 : 1 (published example).
TEST(Palette, MeasuresContrastAsPublished) {
    EXPECT_NEAR(contrast(Qt::white, Qt::black), 21, 1e-9);
    EXPECT_NEAR(contrast(QColor(0x77, 0x77, 0x77), Qt::white), 4.48, 0.005);
}

QImage signOf(Severity severity) {
    QImage image(60, 60, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    Palette palette = paletteOf(PaletteKind::Paper);
    palette.stop = palette.care = palette.note = Qt::black;  // colour takes no part in it
    paintSign(painter, {30, 30}, 40, severity, QString(), palette);
    return image;
}

TEST(Signs, TellSeveritiesApartWithoutColour) {
    const QImage stop = signOf(Severity::Stop);
    const QImage care = signOf(Severity::Care);
    const QImage note = signOf(Severity::Note);
    EXPECT_LT(qGray(stop.pixel(30, 30)), 60) << "stop is filled";
    EXPECT_GT(qGray(care.pixel(30, 33)), 200) << "care is not";
    EXPECT_GT(qGray(note.pixel(30, 30)), 200);
    const auto darkIn = [](const QImage& image, int y) {
        int dark = 0;
        for (int x = 0; x < image.width(); ++x) dark += qGray(image.pixel(x, y)) < 100 ? 1 : 0;
        return dark;
    };
    // The triangle's base is a full row; the ring has nothing at its corners.
    EXPECT_GT(darkIn(care, 47), 35);
    EXPECT_LT(darkIn(note, 47), 25);
}

}  // namespace
}  // namespace kerfwall
