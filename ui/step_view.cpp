// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/step_view.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/shop/same_step.h"
#include "ui/paper_setting.h"
#include "ui/screen_painting.h"
#include "ui/session.h"
#include "ui/spoken.h"
#include "ui/step_figures.h"
#include "ui/step_picture.h"

namespace kerfwall {

StepView::StepView(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_title(new QLabel(this)), m_lie(new QLabel(this)),
      m_because(new QLabel(this)),
      m_figures(new StepFigures(this)), m_picture(new StepPicture(session, this)) {
    setObjectName(QStringLiteral("stepView"));
    setFocusPolicy(Qt::StrongFocus);
    m_title->setObjectName(QStringLiteral("sectionTitle"));
    m_title->setWordWrap(true);
    m_lie->setObjectName(QStringLiteral("faint"));
    m_lie->setWordWrap(true);
    m_because->setObjectName(QStringLiteral("faint"));
    m_because->setWordWrap(true);
    m_previous = button(tr("Previous"), "previousStep");
    m_next = button(tr("Next"), "nextStep");
    m_close = button(tr("Close"), "closeStep");
    auto* head = new QHBoxLayout;
    head->addWidget(m_title, 1);
    for (QPushButton* each : {m_previous, m_next, m_close}) head->addWidget(each, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 8, 12, 8);
    column->setSpacing(6);
    column->addLayout(head);
    column->addWidget(m_lie);
    column->addWidget(m_because);
    column->addWidget(m_figures);
    column->addWidget(m_picture, 1);
    connect(m_previous, &QPushButton::clicked, this, [this] { go(-1); });
    connect(m_next, &QPushButton::clicked, this, [this] { go(1); });
    connect(m_close, &QPushButton::clicked, this, &StepView::close);
    connect(&m_session, &Session::changed, this, &StepView::follow);
    connect(&m_session, &Session::opened, this, [this] {
        m_last = 0;
        close();
    });
    hide();
}

/// For the mouse: the keyboard has its keys without going through them.
QPushButton* StepView::button(const QString& text, const char* name) {
    auto* made = new QPushButton(text, this);
    made->setObjectName(QString::fromLatin1(name));
    made->setFocusPolicy(Qt::NoFocus);
    return made;
}

void StepView::open(std::size_t step) {
    m_step = step;
    m_last = step;
    m_steps = m_session.order().steps;
    refresh();
    show();
    setFocus(Qt::OtherFocusReason);
    Q_EMIT opened(step);
}

void StepView::close() {
    if (!m_step) return;
    m_step.reset();
    hide();
    Q_EMIT closed();
}

bool StepView::go(int by) {
    const auto count = static_cast<int>(m_session.order().steps.size());
    if (count == 0) return false;
    const int from = static_cast<int>(m_step.value_or(m_last));
    const int to = std::clamp(m_step ? from + by : from, 0, count - 1);
    if (!m_step || to != from) open(static_cast<std::size_t>(to));
    return true;
}

void StepView::follow() {
    if (!m_step) return;
    const std::vector<WorkStep>& now = m_session.order().steps;
    const auto there = sameStep(m_steps, *m_step, now);
    if (!there) return close();
    m_step = there;
    m_last = *there;
    m_steps = now;
    refresh();
    Q_EMIT opened(*there);
}

void StepView::refresh() {
    const Project& project = m_session.project();
    const WorkStep& step = m_steps.at(*m_step);
    m_title->setText(tr("Step %1 of %2. %3").arg(step.number).arg(m_steps.size()).arg(stepTitle(project, step)));
    QString lie = lieWords(step).join(QStringLiteral(" · "));
    if (!lie.isEmpty()) lie[0] = lie[0].toUpper();
    m_lie->setText(lie);
    m_lie->setVisible(!lie.isEmpty());
    m_because->setText(QString::fromStdString(step.because));
    m_because->setVisible(!step.because.empty());
    m_figures->show(settingFigures(project, m_session.solved(), step));
    m_picture->show(*m_step);
    m_previous->setEnabled(*m_step > 0);
    m_next->setEnabled(*m_step + 1 < m_steps.size());
    setAccessibleName(m_title->text());
    setAccessibleDescription(stepInWords(m_session, *m_step));
    m_picture->setAccessibleName(tr("Picture of the panel after this step"));
    m_picture->setAccessibleDescription(lie);
}

void StepView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Left:
        case Qt::Key_Up:
        case Qt::Key_PageUp: go(-1); return;
        case Qt::Key_Right:
        case Qt::Key_Down:
        case Qt::Key_PageDown: go(1); return;
        case Qt::Key_Home: return open(0);
        case Qt::Key_End: return open(m_steps.size() - 1);
        case Qt::Key_Escape: return close();
        default: QWidget::keyPressEvent(event);
    }
}

void StepView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), drawingColours().ground);
    if (hasFocus()) paintFocus(painter, rect());
}

void StepView::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void StepView::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

}  // namespace kerfwall
