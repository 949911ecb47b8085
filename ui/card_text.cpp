// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/card_text.h"

#include <QEvent>
#include <QFontMetrics>
#include <QPainter>
#include <cmath>

namespace kerfwall {
namespace {

constexpr int kUsualWidth = 300;     // pixels
constexpr int kNarrowestLetters = 6;  // a line of so many is the least

QTextOption wrapping() {
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    return option;
}

/// A text layout begins a new line at its own sign only.
QString inLines(QString text) { return text.replace(QLatin1Char('\n'), QChar::LineSeparator); }

}  // namespace

CardText::CardText(QWidget* parent) : QWidget(parent) {
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    m_laid.setTextOption(wrapping());
}

void CardText::setText(const QString& text) {
    if (text == m_text) return;
    const int before = heightForWidth(width());
    m_text = text;
    m_heights.clear();
    m_laidWidth = -1;
    if (heightForWidth(width()) != before) updateGeometry();
    update();
}

void CardText::setInk(const QColor& ink) {
    if (ink == m_ink) return;
    m_ink = ink;
    update();
}

void CardText::setBold(bool bold) {
    if (font().bold() == bold) return;
    QFont changed = font();
    changed.setBold(bold);
    setFont(changed);
}

void CardText::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) forgetHeights();
    QWidget::changeEvent(event);
}

void CardText::forgetHeights() {
    m_heights.clear();
    m_laidWidth = -1;
    updateGeometry();
    update();
}

double CardText::layOut(QTextLayout& layout, int width) {
    double height = 0;
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        line.setPosition({0, height});
        height += line.height();
    }
    layout.endLayout();
    return height;
}

int CardText::heightForWidth(int width) const {
    const auto known = m_heights.find(width);
    if (known != m_heights.end()) return known->second;
    QTextLayout layout(inLines(m_text), font());
    layout.setTextOption(wrapping());
    return m_heights[width] = static_cast<int>(std::ceil(layOut(layout, width)));
}

QSize CardText::sizeHint() const { return {kUsualWidth, heightForWidth(kUsualWidth)}; }

QSize CardText::minimumSizeHint() const {
    return {kNarrowestLetters * fontMetrics().averageCharWidth(), fontMetrics().height()};
}

void CardText::paintEvent(QPaintEvent*) {
    if (m_laidWidth != width()) {
        m_laid.setText(inLines(m_text));
        m_laid.setFont(font());
        layOut(m_laid, width());
        m_laidWidth = width();
    }
    QPainter painter(this);
    painter.setPen(m_ink);
    m_laid.draw(&painter, {0, 0});
}

}  // namespace kerfwall
