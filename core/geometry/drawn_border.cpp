// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/drawn_border.h"

namespace kerfwall {
namespace {

/// The deepest place of a stretch that does not cross the border.
Deepest deepestBetween(const Curve& curve, double from, double to, const DrawnBorder& border,
                       const std::vector<DrawnBorder::Segment>& near) {
    constexpr int kSamples = 8;
    constexpr int kNarrowings = 44;  // 0.618^44 of two strides: under 1e-9 of the stretch
    constexpr double kGolden = 0.6180339887498949;
    const auto depthAt = [&](double t) { return border.distanceOutside(curve.at(t), near); };
    if (depthAt((from + to) / 2) <= 0) return {};
    const double stride = (to - from) / kSamples;
    int best = 0;
    double most = -1;
    for (int i = 0; i <= kSamples; ++i) {
        if (const double depth = depthAt(from + i * stride); depth > most) {
            most = depth;
            best = i;
        }
    }
    double low = from + std::max(best - 1, 0) * stride;
    double high = from + std::min(best + 1, kSamples) * stride;
    double a = high - kGolden * (high - low);
    double b = low + kGolden * (high - low);
    double depthA = depthAt(a);
    double depthB = depthAt(b);
    for (int i = 0; i < kNarrowings; ++i) {
        if (depthA < depthB) {
            low = a;
            a = b;
            depthA = depthB;
            b = low + kGolden * (high - low);
            depthB = depthAt(b);
        } else {
            high = b;
            b = a;
            depthB = depthA;
            a = high - kGolden * (high - low);
            depthA = depthAt(a);
        }
    }
    const double at = (low + high) / 2;
    const double there = depthAt(at);
    return there >= most ? Deepest{there, curve.at(at)} : Deepest{most, curve.at(from + best * stride)};
}

}  // namespace

Deepest deepestOn(const Curve& curve, double from, double to, const DrawnBorder& border) {
    const auto near = border.near(curve.at((from + to) / 2), curve.part(from, to).lengthInMm() / 2);
    std::vector<double> marks;
    for (const DrawnBorder::Segment& side : near) meetLine(curve, side.from, unit(side.to - side.from), marks);
    std::erase_if(marks, [&](double t) { return t <= from || t >= to; });
    marks.push_back(from);
    marks.push_back(to);
    std::ranges::sort(marks);
    Deepest deepest{0, curve.at(from)};
    for (std::size_t i = 0; i + 1 < marks.size(); ++i) {
        const Deepest here = deepestBetween(curve, marks[i], marks[i + 1], border, near);
        if (here.depth > deepest.depth) deepest = here;
    }
    return deepest;
}

}  // namespace kerfwall
