// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QApplication>
#include <QSettings>
#include <QSize>
#include <QTemporaryDir>
#include <QTest>
#include <ctime>
#include <string>

#include "ui/look.h"
#include "ui/main_window.h"

namespace kerfwall::frames {

/// Of the window's thread, ms: what painting costs on a machine with nothing else to do.
inline double processorTime() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
}

/// A program that measures windows: drawn by the software raster, with settings of its own.
class OffscreenRun {
public:
    OffscreenRun(int argc, char** argv) : m_argc(argc), m_argv(argv), m_application(named(m_argc), argv) {
        QCoreApplication::setOrganizationName(QStringLiteral("KerfwallFrames"));
        QSettings::setDefaultFormat(QSettings::IniFormat);
        QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, m_settings.path());
        wear(*qApp, Look::Light);
    }
    /// WIDTH HEIGHT of its arguments, or what is usual.
    QSize sizeOr(QSize usual) const {
        return m_argc > 2 ? QSize(std::stoi(m_argv[1]), std::stoi(m_argv[2])) : usual;
    }

private:
    static int& named(int& argc) {
        qputenv("QT_QPA_PLATFORM", qEnvironmentVariable("QT_QPA_PLATFORM", QStringLiteral("offscreen")).toUtf8());
        return argc;
    }
    int m_argc;
    char** m_argv;
    QTemporaryDir m_settings;
    QApplication m_application;
};

/// The window shown at that size with that project on it and that tool taken.
inline void showWith(MainWindow& window, const Project& project, QSize size, int tool) {
    window.resize(size);
    window.show();
    window.session().start(project);
    window.chooseTool(tool);
    static_cast<void>(QTest::qWaitForWindowActive(&window));
}

}  // namespace kerfwall::frames
