// SPDX-License-Identifier: GPL-3.0-or-later
// How long the window's thread is busy for each frame while a line is dragged: mouse events come at the screen's beat,
// everything they bring about (the tool, answers that arrive, painting with the software raster) is counted in the
// beat it falls in, in the thread's processor time. Printed: the median, the 95th percentile and the longest of the beats, and
// how many different answers were shown. Usage: kerfwall_frames [WIDTH HEIGHT]
#include <QElapsedTimer>
#include <QMouseEvent>
#include <QTest>
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <string>
#include <vector>

#include "tests/bench/bench_layouts.h"
#include "tests/frames/offscreen_run.h"
#include "ui/plan_view.h"
#include "ui/selection.h"

namespace kerfwall {
namespace {

using frames::processorTime;
using frames::showWith;

constexpr int kFrames = 240;
constexpr int kWarmUp = 20;  // frames: glyphs and caches
constexpr double kSwing = 24;  // pixels the line is dragged to and fro

double millisecondsOf(const QElapsedTimer& timer) { return static_cast<double>(timer.nsecsElapsed()) * 1e-6; }

void sendMouse(PlanView& plan, QEvent::Type type, QPointF at) {
    const Qt::MouseButton button = type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
    const Qt::MouseButtons held = type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton;
    QMouseEvent event(type, at, plan.mapToGlobal(at), button, held, Qt::NoModifier);
    QCoreApplication::sendEvent(&plan, &event);
}

/// One beat of `period` ms that begins with a mouse move; the busy time in it.
double beat(PlanView& plan, QPointF at, double period) {
    QElapsedTimer whole;
    whole.start();
    const double before = processorTime();
    sendMouse(plan, QEvent::MouseMove, at);
    do {
        QCoreApplication::processEvents();
        QThread::usleep(500);
    } while (millisecondsOf(whole) < period);
    return processorTime() - before;
}

void run(const std::string& name, const Project& project, double period, QSize size) {
    MainWindow window;
    showWith(window, project, size, MainWindow::PickAt);
    PlanView& plan = window.plan();
    const SolvedLine line = window.session().solved().lines.front();
    const Point across = unit(leftOf(line.to - line.from));
    // A place where the hand catches this line: no other crosses there, no sign and no size lies over it.
    QPointF grabbed;
    for (double share = 0.03; share < 1; share += 0.02) {
        grabbed = plan.viewScale().toScreen(line.from + share * (line.to - line.from));
        sendMouse(plan, QEvent::MouseButtonPress, grabbed);
        sendMouse(plan, QEvent::MouseButtonRelease, grabbed);
        if (window.selection().line() == line.id) break;
    }
    const QPointF sideways(across.x, -across.y);
    const auto pixel = [&](double shift) { return grabbed + shift * sideways; };
    std::size_t shown = 0;
    QObject::connect(&window.session(), &Session::changed, &window, [&shown] { ++shown; });
    sendMouse(plan, QEvent::MouseButtonPress, pixel(0));
    std::vector<double> times;
    for (int i = 0; i < kFrames + kWarmUp; ++i) {
        const double busy = beat(plan, pixel(kSwing * std::sin(0.1 * i)), period);
        if (i >= kWarmUp) times.push_back(busy);
    }
    sendMouse(plan, QEvent::MouseButtonRelease, pixel(0));
    std::ranges::sort(times);
    const auto at = [&](double share) { return times[static_cast<std::size_t>(share * (times.size() - 1))]; };
    std::printf("%-12s %4zu lines  median %6.2f ms  95th %6.2f ms  longest %6.2f ms  of %.1f  %zu answers in %d frames\n",
                name.c_str(), project.lines.size(), at(0.5), at(0.95), times.back(), period, shown, kFrames + kWarmUp);
}

}  // namespace
}  // namespace kerfwall

int main(int argc, char** argv) {
    const kerfwall::frames::OffscreenRun run(argc, argv);
    const QSize size = run.sizeOr(QSize(1360, 860));
    constexpr double kSixtieth = 1000.0 / 60, kThirtieth = 1000.0 / 30;  // ms
    using namespace kerfwall::bench;
    kerfwall::run("windows", windows(12), kSixtieth, size);
    kerfwall::run("windows", windows(40), kSixtieth, size);
    kerfwall::run("round", roundCutout(40), kSixtieth, size);
    kerfwall::run("windows", windows(200), kThirtieth, size);
    kerfwall::run("round", roundCutout(200), kThirtieth, size);
}
