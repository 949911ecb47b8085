// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/screen_bar.h"

#include <QPainter>
#include <algorithm>

#include "ui/look.h"

namespace kerfwall {
namespace {

// Pixels.
constexpr int kLongest = 600;
constexpr int kAside = 60;    // kept free on either side
constexpr int kMargin = 16;   // of ground round the bar
constexpr int kThick = 10;
constexpr int kTick = 30;

}  // namespace

ScreenBar::ScreenBar(QWidget* plan) : QWidget(plan) {
    setObjectName(QStringLiteral("screenBar"));
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setAccessibleName(tr("Bar to hold a ruler to"));
    hide();
}

int ScreenBar::barLength() const { return width() - 2 * kMargin; }

void ScreenBar::lay() {
    const int length = std::clamp(parentWidget()->width() - 2 * kAside, 100, kLongest);
    resize(length + 2 * kMargin, kTick + 2 * kMargin);
    move((parentWidget()->width() - width()) / 2, parentWidget()->height() * 2 / 3);
    show();
    raise();
}

void ScreenBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setPen(colours().rule);
    painter.setBrush(colours().column);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
    const int middle = height() / 2;
    painter.fillRect(kMargin, middle - kThick / 2, barLength(), kThick, colours().ink);
    for (const int x : {kMargin, kMargin + barLength() - 2}) painter.fillRect(x, middle - kTick / 2, 2, kTick, colours().ink);
}

}  // namespace kerfwall
