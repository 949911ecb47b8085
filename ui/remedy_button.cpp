// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/remedy_button.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

#include "ui/look.h"

namespace kerfwall {
namespace {

constexpr int kAside = 10;        // pixels between frame and words
constexpr int kAbove = 6;
constexpr int kLeastHeight = 30;  // a target of 24 pixels and more
constexpr int kUsualWidth = 300;

}  // namespace

RemedyButton::RemedyButton(const QString& words, QWidget* parent) : QAbstractButton(parent) {
    setObjectName(QStringLiteral("remedy"));
    setText(words);
    setAccessibleName(words);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setAttribute(Qt::WA_Hover);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

QSize RemedyButton::sizeHint() const { return {kUsualWidth, heightForWidth(kUsualWidth)}; }

int RemedyButton::heightForWidth(int width) const {
    const QRect words = fontMetrics().boundingRect(QRect(0, 0, width - 2 * kAside, 1000), Qt::TextWordWrap, text());
    return std::max(kLeastHeight, words.height() + 2 * kAbove);
}

void RemedyButton::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool isLit = underMouse() || isDown();
    const QRectF frame = QRectF(rect()).adjusted(1, 1, -1, -1);
    painter.setPen(QPen(colours().accent, hasFocus() ? 2 : 1));
    painter.setBrush(isLit ? colours().accentTint : colours().column);
    painter.drawRoundedRect(frame, 3, 3);
    painter.setPen(colours().accent);
    painter.drawText(rect().adjusted(kAside, 0, -kAside, 0), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, text());
}

void RemedyButton::enterEvent(QEnterEvent* event) {
    QAbstractButton::enterEvent(event);
    Q_EMIT lookedAt(true);
}

void RemedyButton::leaveEvent(QEvent* event) {
    QAbstractButton::leaveEvent(event);
    Q_EMIT lookedAt(hasFocus());
}

void RemedyButton::focusInEvent(QFocusEvent* event) {
    QAbstractButton::focusInEvent(event);
    Q_EMIT lookedAt(true);
}

void RemedyButton::focusOutEvent(QFocusEvent* event) {
    QAbstractButton::focusOutEvent(event);
    Q_EMIT lookedAt(underMouse());
}

void RemedyButton::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return click();
    QAbstractButton::keyPressEvent(event);
}

}  // namespace kerfwall
