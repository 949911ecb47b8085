// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sizes_on_plan.h"

#include <QEvent>
#include <QFrame>
#include <QLabel>
#include <QMouseEvent>
#include <algorithm>
#include <utility>

#include "core/geometry/size_setting.h"
#include "ui/length_field.h"
#include "ui/plan_view.h"
#include "ui/selection.h"
#include "ui/session.h"
#include "ui/surface.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr double kLeastTarget = 24;  // pixels, both ways (WCAG 2.2, 2.5.8)
constexpr int kFieldWidth = 104;
constexpr double kFurthest = 10000;  // mm, as the project file says

DrawnBetween drawnBetween(const Dimension& size) { return {size.between->first, size.between->second, size.from, size.to}; }

bool isOf(const Dimension& size, const Picked& picked) {
    const auto isPicked = [&](const Base& base) {
        const auto* id = std::get_if<LineId>(&base);
        return id && std::ranges::find(picked.lines, *id) != picked.lines.end();
    };
    const bool ofCutout = std::ranges::find(picked.cutouts, size.id) != picked.cutouts.end();
    return picked.isEmpty() || ofCutout || isPicked(size.between->first) || isPicked(size.between->second);
}

}  // namespace

SizesOnPlan::SizesOnPlan(Session& session, Selection& selection, PlanView& plan, std::function<bool()> isFree)
    : QObject(&plan), m_session(session), m_selection(selection), m_plan(plan), m_isFree(std::move(isFree)),
      m_frame(new QFrame(&plan)), m_field(new LengthField(&plan)), m_trouble(new QLabel(&plan)) {
    m_frame->setObjectName(QStringLiteral("sizePointed"));
    m_frame->setFrameShape(QFrame::Box);
    m_frame->setAttribute(Qt::WA_TransparentForMouseEvents);
    m_field->setObjectName(QStringLiteral("sizeField"));
    m_field->setFixedWidth(kFieldWidth);
    m_trouble->setObjectName(QStringLiteral("sizeTrouble"));
    m_trouble->setAutoFillBackground(true);
    m_trouble->setMargin(6);
    for (QWidget* widget : std::initializer_list<QWidget*>{m_frame, m_field, m_trouble}) widget->hide();
    m_plan.installEventFilter(this);
    m_field->installEventFilter(this);
    connect(m_field, &LengthField::entered, this, [this](std::optional<double> value) {
        if (value && m_open) set(*value);
    });
    connect(m_field, &LengthField::troubled, this, &SizesOnPlan::tell);
    connect(m_field, &LengthField::left, this, &SizesOnPlan::close);
    connect(&m_plan, &PlanView::scaleChanged, this, [this] {
        point(std::nullopt);
        close();
    });
}

std::vector<Dimension> SizesOnPlan::sizes() const {
    PlanLayers layers = m_plan.layers();
    if (!layers.dimensions) return {};
    layers.markScale = m_plan.viewScale().markScale();
    std::vector<Dimension> sizes = planSizes(m_session.project(), m_session.solved(), layers);
    std::erase_if(sizes, [](const Dimension& size) { return !size.between || size.from == size.to; });
    return sizes;
}

/// Where its text stands on the plan, and room for the hand round it.
QRectF SizesOnPlan::rectOf(const Dimension& size) const {
    const ViewScale& scale = m_plan.viewScale();
    const Label label = dimensionLabel(size, scale.markScale());
    const double perPaper = scale.markScale() * scale.perMm;
    const double letters = textWidth(QString::fromStdString(label.text), label.height) * perPaper;
    const double wide = std::max(letters + 10, kLeastTarget);
    const QPointF at = scale.toScreen(label.at) - QPointF(0, 0.36 * label.height * perPaper);
    const double left = label.anchor == Anchor::Left ? -5 : label.anchor == Anchor::Right ? 5 - wide : -wide / 2;
    return {at.x() + left, at.y() - kLeastTarget / 2, wide, kLeastTarget};
}

std::optional<Dimension> SizesOnPlan::sizeAt(QPointF pixel) const {
    for (const Dimension& size : sizes()) {
        if (rectOf(size).contains(pixel)) return size;
    }
    return std::nullopt;
}

void SizesOnPlan::point(const std::optional<Dimension>& size) {
    if (size == m_pointed) return;
    m_pointed = size;
    m_frame->setVisible(size.has_value());
    if (size) m_frame->setGeometry(rectOf(*size).toRect());
    const LineId moves = size ? movedBy(m_session.project(), drawnBetween(*size)) : LineId{};
    Q_EMIT pointed(size ? tr("Click to set this size where it stands. Line %1 moves: it was laid later.").arg(QString::fromStdString(moves)) : QString());
}

void SizesOnPlan::open(const Dimension& size) {
    m_session.commit();
    m_open = size;
    m_frame->hide();
    m_pointed.reset();
    const DrawnBetween between = drawnBetween(size);
    m_field->setUnits(m_session.project().units);
    m_field->setAccessibleName(tr("Size from the %1 to the %2").arg(baseText(between.first), baseText(between.second)));
    m_field->showAnyway(distance(size.from, size.to));
    tell({});
    const QPoint middle = rectOf(size).center().toPoint();
    const QSize room = m_plan.size() - m_field->sizeHint();
    m_field->move(std::clamp(middle.x() - kFieldWidth / 2, 0, std::max(0, m_plan.width() - kFieldWidth)),
                  std::clamp(middle.y() - m_field->sizeHint().height() / 2, 0, std::max(0, room.height())));
    m_field->setVisible(true);
    m_field->raise();
    m_field->setFocus(Qt::ShortcutFocusReason);
    m_field->selectAll();
    const QString line = QString::fromStdString(movedBy(m_session.project(), between));
    Q_EMIT pointed(tr("Type the size from the %1 to the %2. Enter moves line %3, Esc leaves it. F12 goes to the next size.")
                       .arg(baseText(between.first), baseText(between.second), line));
}

bool SizesOnPlan::openNext() {
    std::vector<Dimension> ours = sizes();
    std::erase_if(ours, [&](const Dimension& size) { return !isOf(size, m_selection.picked()); });
    if (ours.empty()) return false;
    const auto here = m_open ? std::ranges::find(ours, *m_open) : ours.end();
    const Dimension next = here == ours.end() || here + 1 == ours.end() ? ours.front() : *(here + 1);
    open(next);
    return true;
}

void SizesOnPlan::set(double value) {
    const DrawnBetween between = drawnBetween(*m_open);
    if (value > kFurthest) return tell(tr("A size is at most 10000 mm."));
    const auto next = withSize(m_session.project(), m_session.solved(), between, value);
    if (next) {
        const QString name = tr("Set the size from the %1 to the %2").arg(baseText(between.first), baseText(between.second));
        close();
        m_plan.setFocus();
        return m_session.change(name, *next);
    }
    switch (next.error()) {
        case NoSize::TooSmall: return tell(tr("A size is more than 0."));
        case NoSize::OffThePanel: return tell(tr("The line would lie off the panel or on another line; type another size."));
        case NoSize::GoesAlong: return tell(tr("Both ends move together; set the line that one of them was laid from."));
    }
}

void SizesOnPlan::tell(const QString& trouble) {
    m_trouble->setText(trouble);
    m_trouble->setVisible(!trouble.isEmpty() && m_open);
    if (trouble.isEmpty()) return;
    m_trouble->adjustSize();
    const QPoint under = m_field->geometry().bottomLeft() + QPoint(0, 4);
    m_trouble->move(std::clamp(under.x(), 0, std::max(0, m_plan.width() - m_trouble->width())), under.y());
    m_trouble->raise();
}

void SizesOnPlan::close() {
    if (!m_open) return;
    m_open.reset();
    const bool hadFocus = m_field->hasFocus();
    m_trouble->hide();
    if (hadFocus) m_plan.setFocus();
    m_field->hide();
    Q_EMIT pointed({});
    Q_EMIT closed();
}

bool SizesOnPlan::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_field) {
        if (event->type() == QEvent::FocusOut && !m_field->isBeingTyped()) close();
        if (event->type() != QEvent::KeyPress) return false;
        // The field leaves Return to the plan under it, which means something else by it.
        m_field->event(event);
        event->accept();
        return true;
    }
    const auto* mouse = static_cast<QMouseEvent*>(event);
    switch (event->type()) {
        case QEvent::MouseMove:
            if (mouse->buttons() == Qt::NoButton && !m_open) point(m_isFree() ? sizeAt(mouse->position()) : std::nullopt);
            return false;
        case QEvent::Leave:
            if (!m_open) point(std::nullopt);
            return false;
        case QEvent::MouseButtonPress: {
            close();
            const bool plain = mouse->button() == Qt::LeftButton && mouse->modifiers() == Qt::NoModifier && m_isFree();
            const auto size = plain ? sizeAt(mouse->position()) : std::nullopt;
            m_pressed = size.has_value();
            if (size) open(*size);
            return m_pressed;
        }
        case QEvent::MouseButtonRelease: return std::exchange(m_pressed, false);
        default: return false;
    }
}

}  // namespace kerfwall
