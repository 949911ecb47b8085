// SPDX-License-Identifier: GPL-3.0-or-later
// How long one full repaint takes with the software raster, in the window's thread's processor time: of the plan, of the plan
// while it is moved about, of the plan under a hovering hand, and of both side views. Printed: the median of many, ms.
// Usage: kerfwall_painting [WIDTH HEIGHT]
#include <QApplication>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <cstdio>
#include <ctime>
#include <functional>
#include <vector>

#include "tests/bench/bench_layouts.h"
#include "ui/look.h"
#include "ui/main_window.h"
#include "ui/plan_view.h"
#include "ui/sheet_views.h"
#include "ui/side_view_panel.h"

namespace kerfwall {
namespace {

constexpr int kTimes = 60;

double processorTime() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
}

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
    window.resize(size);
    window.show();
    window.session().start(project);
    window.chooseTool(MainWindow::LayAt);
    static_cast<void>(QTest::qWaitForWindowActive(&window));
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
    qputenv("QT_QPA_PLATFORM", qEnvironmentVariable("QT_QPA_PLATFORM", QStringLiteral("offscreen")).toUtf8());
    const QApplication application(argc, argv);
    const QTemporaryDir settings;
    QCoreApplication::setOrganizationName(QStringLiteral("KerfwallPainting"));
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    kerfwall::wear(*qApp, kerfwall::Look::Light);
    const QSize size = argc > 2 ? QSize(std::stoi(argv[1]), std::stoi(argv[2])) : QSize(1280, 800);
    using namespace kerfwall::bench;
    kerfwall::run("windows", windows(12), size);
    kerfwall::run("windows", windows(40), size);
    kerfwall::run("round", roundCutout(40), size);
    kerfwall::run("windows", windows(200), size);
}
