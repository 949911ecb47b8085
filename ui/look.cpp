// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/look.h"

#include <QApplication>
#include <QFontInfo>
#include <QPalette>

#include "ui/roomy_style.h"

namespace kerfwall {
namespace {

// Accent, stop and care stay apart for the colour-blind (blue, vermillion, orange of a published palette,
// darkened or lightened until text on them reads at 4.5 : 1).
WindowColours lightColours() {
    return {false,
            QColor(0xf6, 0xf5, 0xf1), QColor(0xfd, 0xfc, 0xf9), QColor(0xff, 0xff, 0xff), QColor(0xd8, 0xd6, 0xd0), QColor(0x8a, 0x88, 0x82),
            QColor(0x1c, 0x1c, 0x1c), QColor(0x5c, 0x5c, 0x5a), QColor(0x00, 0x62, 0xa3), QColor(0xe2, 0xee, 0xf7),
            QColor(0xb0, 0x3a, 0x00), QColor(0xfd, 0xea, 0xe2), QColor(0x8a, 0x5a, 0x00), QColor(0xfd, 0xf3, 0xdc)};
}

WindowColours darkColours() {
    return {true,
            QColor(0x1e, 0x1f, 0x21), QColor(0x2a, 0x2b, 0x2c), QColor(0x26, 0x27, 0x28), QColor(0x45, 0x46, 0x48), QColor(0x82, 0x82, 0x80),
            QColor(0xec, 0xea, 0xe6), QColor(0xae, 0xac, 0xa6), QColor(0x7a, 0xc0, 0xf0), QColor(0x24, 0x3c, 0x4e),
            QColor(0xff, 0x8f, 0x5c), QColor(0x47, 0x2a, 0x1e), QColor(0xf0, 0xbc, 0x52), QColor(0x41, 0x36, 0x1e)};
}

WindowColours& worn() {
    static WindowColours colours = lightColours();
    return colours;
}

QPalette paletteOf(const WindowColours& c) {
    QPalette palette;
    palette.setColor(QPalette::Window, c.strip);
    palette.setColor(QPalette::WindowText, c.ink);
    palette.setColor(QPalette::Base, c.column);
    palette.setColor(QPalette::AlternateBase, c.strip);
    palette.setColor(QPalette::Text, c.ink);
    palette.setColor(QPalette::Button, c.strip);
    palette.setColor(QPalette::ButtonText, c.ink);
    palette.setColor(QPalette::ToolTipBase, c.strip);
    palette.setColor(QPalette::ToolTipText, c.ink);
    palette.setColor(QPalette::PlaceholderText, c.faint);
    palette.setColor(QPalette::Highlight, c.accent);
    palette.setColor(QPalette::HighlightedText, c.dark ? QColor(Qt::black) : QColor(Qt::white));
    palette.setColor(QPalette::Link, c.accent);
    for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        palette.setColor(QPalette::Disabled, role, c.dark ? QColor(0x77, 0x77, 0x77) : QColor(0x99, 0x99, 0x99));
    }
    return palette;
}

/// Headings are a little larger than the letters the desktop asks for.
int headingPixels() { return qRound(QFontInfo(QApplication::font()).pixelSize() * 15 / 13.0); }

QString sheetOf(const WindowColours& c) {
    return QStringLiteral(
               "#entryLine { border-top: 1px solid %1; background: %2; }"
               "#headerLine { border-bottom: 1px solid %1; background: %2; }"
               "#toolStrip { border-right: 1px solid %1; background: %2; }"
               "#jobCard { border: 0; border-left: 1px solid %1; background: %3; }"
               "#jobCardSheet { background: %3; }"
               "#notice { background: %6; border: 0; border-bottom: 1px solid %7; }"
               "#sectionTitle { font-weight: bold; font-size: %11px; }"
               "#groupTitle { font-weight: bold; padding-top: 6px; }"
               "#faint { color: %5; }"
               "#sentence { color: %5; }"
               "#headerTitle { font-weight: bold; font-size: %11px; }"
               "QMenuBar { background: transparent; } QMenuBar::item { padding: 5px 10px; background: transparent; }"
               "QMenuBar::item:selected { background: %9; color: %4; }"
               "#firstSheet, #firstPage { background: %2; }"
               "#firstSheet QPushButton { text-align: left; padding: 5px 10px; border: 1px solid %1; border-radius: 2px; background: %3; }"
               "#firstSheet QPushButton:hover { background: %9; }"
               "#firstSheet QPushButton:focus { border: 2px solid %8; padding: 4px 9px; }"
               "QPushButton[fold=\"true\"] { text-align: left; border: 1px solid %1; border-radius: 2px; padding: 5px 6px; background: %3; }"
               "QPushButton[fold=\"true\"]:hover, QPushButton[fold=\"true\"]:checked { background: %9; }"
               "QPushButton[fold=\"true\"]:focus { border: 2px solid %8; padding: 4px 5px; }"
               "QPlainTextEdit { border: 1px solid %10; border-radius: 2px; background: %3; }"
               "QPlainTextEdit:focus { border: 2px solid %8; }"
               "QLineEdit { border: 1px solid %10; border-radius: 2px; padding: 3px 5px; background: %3; }"
               "QLineEdit:focus { border: 2px solid %8; padding: 2px 4px; }"
               "QLineEdit[trouble=\"true\"] { border: 2px solid %7; padding: 2px 4px; }"
               "QLabel[trouble=\"true\"] { color: %7; }")
        .arg(c.rule.name(), c.strip.name(), c.column.name(), c.ink.name(), c.faint.name(), c.careTint.name(),
             c.stop.name(), c.accent.name(), c.accentTint.name(), c.field.name(), QString::number(headingPixels()));
}

/// True where the desktop's own colours are dark. Asked once, before our palette covers them.
bool isDesktopDark() {
    static const bool dark = QApplication::palette().color(QPalette::Window).lightness() < 128;
    return dark;
}

}  // namespace

void wear(QApplication& application, Look look) {
    const bool desktopDark = isDesktopDark();
    const bool dark = look == Look::Dark || (look == Look::System && desktopDark);
    worn() = dark ? darkColours() : lightColours();
    QApplication::setStyle(new RoomyStyle);  // the application owns it
    QApplication::setPalette(paletteOf(worn()));
    application.setStyleSheet(sheetOf(worn()));
}

const WindowColours& colours() { return worn(); }

}  // namespace kerfwall
