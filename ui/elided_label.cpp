// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/elided_label.h"

#include <QEvent>
#include <algorithm>

namespace kerfwall {

ElidedLabel::ElidedLabel(int leastWidth, QWidget* parent) : QLabel(parent), m_leastWidth(leastWidth) {
    setTextFormat(Qt::PlainText);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
}

void ElidedLabel::showWhole(const QString& text) {
    m_whole = text;
    setAccessibleName(text);
    updateGeometry();
    elide();
}

QSize ElidedLabel::sizeHint() const {
    const QFontMetrics metrics(font());
    return {metrics.horizontalAdvance(m_whole) + 2, metrics.height()};
}

QSize ElidedLabel::minimumSizeHint() const { return {std::min(m_leastWidth, sizeHint().width()), sizeHint().height()}; }

void ElidedLabel::resizeEvent(QResizeEvent* event) {
    QLabel::resizeEvent(event);
    elide();
}

void ElidedLabel::changeEvent(QEvent* event) {
    QLabel::changeEvent(event);
    if (event->type() != QEvent::FontChange && event->type() != QEvent::StyleChange) return;
    updateGeometry();
    elide();
}

void ElidedLabel::elide() {
    const QString shown = QFontMetrics(font()).elidedText(m_whole, Qt::ElideRight, width());
    setText(shown);
    setToolTip(shown == m_whole ? QString() : m_whole);
}

}  // namespace kerfwall
