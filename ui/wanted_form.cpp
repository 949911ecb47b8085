// SPDX-License-Identifier: GPL-3.0-or-later
// What the form says and does; its rows stand in wanted_rows.cpp.
#include "ui/wanted_form.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <algorithm>

#include "ui/corner_entry.h"
#include "ui/corner_tool.h"
#include "ui/length_field.h"
#include "ui/rack.h"
#include "ui/session.h"
#include "ui/wish_words.h"
#include "ui/wording.h"

namespace kerfwall {

Tool* WantedForm::cornerTool() const { return m_cornerTool; }

void WantedForm::showClicking(bool clicking) { m_corners->showClicking(clicking); }

WantedForm::Shape WantedForm::shape() const { return static_cast<Shape>(m_shape->currentIndex()); }

void WantedForm::chooseShape(Shape shape) {
    m_shape->setCurrentIndex(shape);
    refresh();
}

void WantedForm::takeCorners(const std::vector<Point>& corners) {
    chooseShape(PolygonShape);
    m_corners->setCorners(corners);
    refresh();
}

std::optional<double> WantedForm::typed(Entry entry) const { return std::ranges::find(m_rows, entry, &Row::entry)->typed; }

WantedForm::Entry WantedForm::entryFor(WishPart part) const {
    const bool legs = shape() == LegsShape;
    switch (part) {
        case WishPart::Width: return legs ? Entry::Span : Entry::Width;
        case WishPart::Height: return legs ? Entry::LegHeight : Entry::Height;
        case WishPart::LegTop: return Entry::LegTop;
        case WishPart::LegFoot: return typed(Entry::InnerLean) ? Entry::InnerLean : Entry::LegFoot;
        case WishPart::Across: return Entry::Across;
        case WishPart::Up: return legs ? Entry::Feet : Entry::Up;
        case WishPart::Corner:
        case WishPart::Corners: return Entry::Corner;
    }
    return Entry::Corner;
}

std::optional<Wish> WantedForm::wish() const {
    if (std::ranges::any_of(m_rows, [](const Row& row) { return row.isShown && row.isUnreadable; })) return std::nullopt;
    if (shape() == LegsShape) return legsWish();
    if (shape() == PolygonShape) return polygonWish();
    const auto width = typed(Entry::Width);
    const auto height = typed(Entry::Height);
    if (!width || !height) return std::nullopt;
    return WantedWindow{*width, *height, typed(Entry::Corner).value_or(cornerLeft(m_session.project())), {}, {}};
}

std::optional<Wish> WantedForm::legsWish() const {
    const auto span = typed(Entry::Span);
    const auto height = typed(Entry::LegHeight);
    const auto top = typed(Entry::LegTop);
    if (!span || !height || !top) return std::nullopt;
    WantedLegs legs{*span, *height, *top, 0, typed(Entry::OuterLean).value_or(0), 0, {}, {}};
    legs.cornerRadius = typed(Entry::Corner).value_or(cornerLeft(m_session.project()));
    const auto lean = typed(Entry::InnerLean);
    const auto foot = typed(Entry::LegFoot);
    legs.legFoot = lean ? legFootFor(legs, *lean) : foot.value_or(legs.legTop);
    return legs;
}

std::optional<Wish> WantedForm::polygonWish() const {
    const CornerList list = m_corners->read();
    if (!list.bad.empty() || list.corners.empty()) return std::nullopt;
    return WantedPolygon{list.corners, typed(Entry::Corner).value_or(cornerLeft(m_session.project())), {}, {}};
}

bool WantedForm::isOnUnknownWork() const { return m_placedOn->currentIndex() == 1 && !workBounds(m_session.project()); }

std::optional<WishPlace> WantedForm::place() const {
    const auto along = [](const QComboBox* from, std::optional<double> distance) -> std::optional<PlaceAlong> {
        if (isMeasured(*from) && !distance) return std::nullopt;
        return PlaceAlong{static_cast<PlaceAlong::From>(from->currentIndex()), distance.value_or(0)};
    };
    WishPlace place;
    place.onWork = m_placedOn->currentIndex() == 1;
    const auto across = along(m_acrossFrom, typed(Entry::Across));
    auto up = along(m_upFrom, typed(Entry::Up));
    if (shape() == LegsShape) {
        const auto feet = typed(Entry::Feet);
        up = feet ? PlaceAlong{PlaceAlong::From::LowSide, *feet} : PlaceAlong{};
    }
    if (!across || !up) return std::nullopt;
    place.across = *across;
    place.up = *up;
    if (!isOnUnknownWork()) return place;
    const auto width = typed(Entry::WorkWidth);
    const auto height = typed(Entry::WorkHeight);
    if (!width || !height) return std::nullopt;
    place.work = Blank{*width, *height};
    return place;
}

void WantedForm::refresh() {
    if (isHidden()) return;
    showRows();
    m_answer->hide();
    m_lay->setEnabled(false);
    tellCorners();
    const auto wanted = wish();
    const auto placed = place();
    if (wanted && placed) return showAnswer(*wanted, *placed);
    m_other->hide();
    offerPanels(std::nullopt);
    foresee(nullptr);
}

void WantedForm::showAnswer(const Wish& wish, const WishPlace& place) {
    const auto laid = layPlaced(m_session.project(), wish, place);
    offerSteering(wish, place);
    offerPanels(laid ? std::optional(laid->goodBlank) : laid.error().goodBlank);
    foresee(&laid);
    if (!laid) return tellRefusal(laid.error());
    m_lay->setEnabled(true);
    m_answer->setText(laidText(*laid, m_session.project()));
    m_answer->show();
}

void WantedForm::tellRefusal(const WishRefusal& refusal) {
    const QString sentence = QString::fromStdString(refusal.sentence);
    const bool isOfCorners = shape() == PolygonShape && refusal.part != WishPart::Corner && refusal.part != WishPart::Across &&
                             refusal.part != WishPart::Up;
    if (isOfCorners) return m_corners->tell(sentence);
    QLabel* beside = row(entryFor(refusal.part)).trouble;
    beside->setText(sentence);
    beside->show();
}

void WantedForm::tellCorners() {
    const CornerList list = m_corners->read();
    m_cornerTool->show(list.corners);
    m_corners->tell(list.bad.empty() ? QString() : QString::fromStdString(list.bad.front().sentence));
}

void WantedForm::foresee(const std::expected<LaidWish, WishRefusal>* laid) {
    InHand shown;
    if (laid && *laid) shown.wished.push_back(polygonLoop((*laid)->walls));
    else if (shape() == PolygonShape && m_corners->read().corners.size() > 1) shown.wished.push_back(polygonLoop(m_corners->read().corners));
    Q_EMIT foreseen(shown);
}

void WantedForm::offerSteering(const Wish& wish, const WishPlace& place) {
    m_offered = otherSteering(m_session.project(), wish, place);
    m_other->setVisible(m_offered.has_value());
    if (m_offered) m_other->setText(steeringText(*m_offered, m_session.project().units));
}

void WantedForm::offerPanels(const std::optional<Blank>& goodBlank) {
    const Project& project = m_session.project();
    m_offeredBlank.reset();
    m_offeredPanel.reset();
    if (goodBlank && isPanelFree(project)) {
        const Blank blank = roundedUp(*goodBlank, project.units);
        m_offeredBlank = StockPanel{blank.width, blank.height, project.panel.thickness};
        m_offeredPanel = smallestHolding(rackPanels(), *goodBlank);
        if (m_offeredBlank == stockPanelOf(project) || !isPanelSize(*m_offeredBlank)) m_offeredBlank.reset();
        if (m_offeredPanel == stockPanelOf(project)) m_offeredPanel.reset();
    }
    m_blank->setVisible(m_offeredBlank.has_value());
    m_fromRack->setVisible(m_offeredPanel.has_value());
    if (m_offeredBlank) m_blank->setText(tr("Take a blank of %1").arg(panelText(*m_offeredBlank, project.units)));
    if (m_offeredPanel) m_fromRack->setText(tr("Take the rack's panel of %1").arg(panelText(*m_offeredPanel, project.units)));
}

void WantedForm::takePanel(const StockPanel& panel) {
    const QString step = tr("Take a panel of %1").arg(panelText(panel, m_session.project().units));
    m_session.change(step, onPanel(m_session.project(), panel));
    m_lay->setFocus(Qt::OtherFocusReason);
}

void WantedForm::lay(const Project& from, bool withOtherTools) {
    const auto wanted = wish();
    const auto placed = place();
    if (!wanted || !placed) return;
    const auto laidWish = layPlaced(from, *wanted, *placed, m_session.highestLine());
    if (!laidWish) return tellRefusal(laidWish.error());
    for (Row& each : m_rows) {
        each.typed.reset();
        each.field->showAnyway(std::nullopt);
    }
    m_corners->clear();
    m_acrossFrom->setCurrentIndex(0);
    m_upFrom->setCurrentIndex(0);
    endClicking();
    m_session.changeWhole(layingStep(*wanted, withOtherTools), laidWish->project);
    Q_EMIT laid();
}

void WantedForm::endClicking() {
    m_corners->showClicking(false);
    Q_EMIT clickAsked(false);
}

void WantedForm::showEvent(QShowEvent* event) {
    QFrame::showEvent(event);
    refresh();
}

void WantedForm::hideEvent(QHideEvent* event) {
    QFrame::hideEvent(event);
    endClicking();
    Q_EMIT foreseen({});
}

}  // namespace kerfwall
