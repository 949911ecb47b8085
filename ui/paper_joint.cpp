// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_joint.h"

#include <algorithm>
#include <array>

#include "ui/paper_text.h"

namespace kerfwall {
namespace {

// mm on paper.
constexpr double kLetters = 2.04;
constexpr double kJoinMark = 2.2;
constexpr double kJoinClear = 7;    // round a joining mark, with its name
constexpr double kWordsClear = 16;  // round the middle of a border's words

/// What two neighbours share: beside one another a strip up the sheet, else one across it.
struct Joint {
    Box both;
    bool beside = false;
    bool isFirst = false;  ///< this sheet is the left or the lower one: it is laid over the other
    QString name;          ///< "A1-A2"
    QString other;
};

Joint jointOf(const JoinedSheet& at, const Sheet& other) {
    const Box& a = at.sheet.window;
    const Box& b = other.window;
    Joint joint;
    joint.both = {{std::max(a.low.x, b.low.x), std::max(a.low.y, b.low.y)}, {std::min(a.high.x, b.high.x), std::min(a.high.y, b.high.y)}};
    joint.beside = other.row == at.sheet.row;
    joint.isFirst = joint.beside ? at.sheet.column < other.column : at.sheet.row > other.row;
    joint.other = sheetName(other);
    const bool isNamedFirst = joint.beside ? at.sheet.column < other.column : at.sheet.row < other.row;
    joint.name = isNamedFirst ? sheetName(at.sheet) + QLatin1Char('-') + joint.other : joint.other + QLatin1Char('-') + sheetName(at.sheet);
    return joint;
}

/// How far a place is from anything that is drawn near the joint.
double clearanceOf(const std::vector<Stretch>& near, Point place, double enough = kJoinClear) {
    double clear = enough;
    for (const auto& [from, to] : near) {
        const Point along = to - from;
        const double whole = dot(along, along);
        const double share = whole > 0 ? std::clamp(dot(place - from, along) / whole, 0.0, 1.0) : 0;
        clear = std::min(clear, distance(place, from + share * along));
    }
    return clear;
}

/// Of what is drawn, what may come within that distance of a box.
std::vector<Stretch> stretchesNear(const std::vector<Stretch>& drawn, const Box& box, double within) {
    std::vector<Stretch> near;
    for (const Stretch& stretch : drawn) {
        const bool apart = std::max(stretch.first.x, stretch.second.x) < box.low.x - within ||
                           std::min(stretch.first.x, stretch.second.x) > box.high.x + within ||
                           std::max(stretch.first.y, stretch.second.y) < box.low.y - within ||
                           std::min(stretch.first.y, stretch.second.y) > box.high.y + within;
        if (!apart) near.push_back(stretch);
    }
    return near;
}

/// Near the middle of a border, where least is drawn.
Point wordsPlace(const std::vector<Stretch>& drawn, Point from, Point to) {
    const Box box{{std::min(from.x, to.x), std::min(from.y, to.y)}, {std::max(from.x, to.x), std::max(from.y, to.y)}};
    const std::vector<Stretch> near = stretchesNear(drawn, box, kWordsClear);
    Point best = 0.5 * (from + to);
    double clear = clearanceOf(near, best, kWordsClear);
    for (const double share : {0.42, 0.58, 0.34, 0.66}) {
        const Point place = from + share * (to - from);
        const double now = clearanceOf(near, place, kWordsClear);
        if (now <= clear + 1e-6) continue;
        clear = now;
        best = place;
    }
    return best;
}

/// In the middle of what both show, one in each half: at a fifth of it where nothing is drawn there, else where most room is. The
/// same on both sheets.
std::array<Point, 2> markPlaces(const std::vector<Stretch>& drawn, const Joint& joint) {
    const Box& both = joint.both;
    const std::vector<Stretch> near = stretchesNear(drawn, both, kJoinClear);
    const Point middle = 0.5 * (both.low + both.high);
    const Point size = both.high - both.low;
    const auto placeAt = [&](double share) {
        return joint.beside ? Point{middle.x, both.low.y + share * size.y} : Point{both.low.x + share * size.x, middle.y};
    };
    std::array<Point, 2> places{placeAt(0.2), placeAt(0.8)};
    for (std::size_t half = 0; half < 2; ++half) {
        double best = clearanceOf(near, places[half]);
        for (int i = 1; i <= 8 && best < kJoinClear; ++i) {
            const Point place = placeAt(half == 0 ? 0.06 + 0.04 * i : 0.94 - 0.04 * i);
            const double clear = clearanceOf(near, place);
            if (clear <= best + 1e-6) continue;
            best = clear;
            places[half] = place;
        }
    }
    return places;
}

/// A cross in a ring at a place of the panel that both neighbours show, its name off the sheet's border.
void paintJoinMark(QPainter& painter, const JoinedSheet& at, Point place, const Joint& joint) {
    const QPointF centre = at.view.toDevice(place);
    const QColor colour = at.palette.ink;
    painter.setPen(thinPen(colour, 0.2));
    painter.setBrush(Qt::NoBrush);
    paintJoinCross(painter, centre);
    Drawing ring;
    ring.marks.emplace_back(Circle{Ink::ReliefHole, {0, 0}, kJoinMark * 0.55, {}});
    paintDrawing(painter, ring, at.palette, paperView(centre));
    const Lettering letters{kLetters, false, colour, joint.beside ? Anchor::Middle : Anchor::Left};
    writeText(painter, joint.beside ? centre - QPointF(0, kJoinMark + 0.6) : centre + QPointF(kJoinMark + 0.8, kLetters * 0.35), joint.name, letters);
}

/// The first sheet is cut at its border and laid over the second, up to the dashed line there, mark on mark.
void paintJoint(QPainter& painter, const JoinedSheet& at, const Sheet& other) {
    const Joint joint = jointOf(at, other);
    const Box& window = at.sheet.window;
    const double border = joint.beside ? joint.both.high.x : joint.both.high.y;
    const Point from = joint.beside ? Point{border, window.low.y} : Point{window.low.x, border};
    const Point to = joint.beside ? Point{border, window.high.y} : Point{window.high.x, border};
    QPen pen = thinPen(joint.isFirst ? at.palette.ink : at.palette.hatch, 0.18);
    if (!joint.isFirst) pen.setDashPattern({8, 6});
    painter.setPen(pen);
    painter.drawLine(QLineF(at.view.toDevice(from), at.view.toDevice(to)));
    Lettering letters{kLetters, false, at.palette.ink, Anchor::Middle};
    letters.turn = joint.beside ? 90 : 0;
    const QString words = joint.isFirst ? PaperWords::tr("cut here, lay over %1").arg(joint.other) : PaperWords::tr("%1 reaches to here").arg(joint.other);
    // Inside the line: on a sheet that is cut nothing is lost with the strip.
    const QPointF inside = joint.beside ? QPointF(-0.8, 0) : QPointF(0, 1.2 * kLetters);
    writeText(painter, at.view.toDevice(wordsPlace(at.drawn, from, to)) + inside, words, letters);
    for (const Point place : markPlaces(at.drawn, joint)) paintJoinMark(painter, at, place, joint);
}

}  // namespace

QString sheetName(const Sheet& sheet) {
    QString letters(QChar(u'A' + sheet.row % 26));  // A ... Z, then AA, AB ...
    if (sheet.row >= 26) letters.prepend(QChar(u'A' + (sheet.row / 26 - 1) % 26));
    return letters + QString::number(sheet.column + 1);
}

void paintJoinCross(QPainter& painter, QPointF centre) {
    painter.drawLine(QLineF(centre - QPointF(kJoinMark, 0), centre + QPointF(kJoinMark, 0)));
    painter.drawLine(QLineF(centre - QPointF(0, kJoinMark), centre + QPointF(0, kJoinMark)));
}

void paintJoints(QPainter& painter, const JoinedSheet& at) {
    for (const Sheet& other : at.sheets.sheets) {
        const int steps = std::abs(other.row - at.sheet.row) + std::abs(other.column - at.sheet.column);
        if (steps == 1) paintJoint(painter, at, other);
    }
}

}  // namespace kerfwall
