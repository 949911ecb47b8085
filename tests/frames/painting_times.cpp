// SPDX-License-Identifier: GPL-3.0-or-later
// How long one full repaint takes with the software raster, in the window's thread's processor time: of the plan, of the plan
// while it is moved about, of the plan under a hovering hand, and of both side views. Printed: the median of many, ms.
// Usage: kerfwall_painting [WIDTH HEIGHT]
#include <QTest>
#include <algorithm>
#include <cstdio>
#include <functional>
#include <vector>

#include "tests/bench/bench_layouts.h"
#include "tests/frames/offscreen_run.h"
#include "ui/plan_view.h"
#include "ui/sheet_views.h"
#include "ui/side_view_panel.h"

namespace kerfwall {
namespace {

using frames::processorTime;
using frames::showWith;

constexpr int kTimes = 60;

double median(const std::function<void(int)>& paints) {
    std::vector<double> times;
    for (int i = 0; i < kTimes; ++i) {
        const double before = processorTime();
        paints(i);
        times.push_back(processorTime() - before);
    }
    std::ranges::sort(times);
    return times[times.size() / 2];
}

void run(const char* name, const Project& project, QSize size) {
    MainWindow window;
    showWith(window, project, size, MainWindow::LayAt);
    QTest::qWait(300);
    PlanView& plan = window.plan();
    SheetViews& views = *window.findChild<SheetViews*>();
    const double whole = median([&](int) {
        Q_EMIT window.session().changed();
        plan.repaint();
    });
    const double moved = median([&](int i) {
        plan.pan({i % 2 ? 3.0 : -3.0, 0});
        plan.repaint();
    });
    const double hovered = median([&](int i) {
        QTest::mouseMove(&plan, QPoint(300 + i, 300));
        plan.repaint();
    });
    const double side = median([&](int) { views.side(CutDirection::Level)->repaint(); });
    std::printf("%-8s %3zu lines  changed %6.2f ms  moved %6.2f ms  hovered %6.2f ms  side view %6.2f ms\n", name,
                project.lines.size(), whole, moved, hovered, side);
}

}  // namespace
}  // namespace kerfwall

int main(int argc, char** argv) {
    const kerfwall::frames::OffscreenRun run(argc, argv);
    const QSize size = run.sizeOr(QSize(1280, 800));
    using namespace kerfwall::bench;
    kerfwall::run("windows", windows(12), size);
    kerfwall::run("windows", windows(40), size);
    kerfwall::run("round", roundCutout(40), size);
    kerfwall::run("windows", windows(200), size);
}
