// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPixmap>
#include <QWidget>
#include <optional>
#include <vector>

#include "core/drawing/cutting_line.h"
#include "core/drawing/plan_drawing.h"
#include "ui/tool.h"
#include "ui/view_scale.h"

namespace kerfwall {

/// The plan of the panel with rulers, and the hand that works on it.
class PlanView : public QWidget {
    Q_OBJECT

public:
    PlanView(Session& session, Selection& selection, QWidget* parent = nullptr);

    void setTool(Tool* tool);
    Tool* tool() const { return m_tool; }

    const ViewScale& viewScale() const { return m_scale; }
    void zoom(double factor);
    void zoomAbout(double factor, QPointF pixel);
    /// The whole panel in view, and the sheets laid on it.
    void fit();
    /// That part of the panel frame in view, as large as it fits.
    void showClose(const Box& box);
    /// A millimetre of the panel is a millimetre on the screen, about the middle of the view.
    void showLifeSize();
    /// Moves the sheet, pixels.
    void pan(QPointF by);

    const PlanLayers& layers() const { return m_layers; }
    void setLayers(const PlanLayers& layers);
    /// The base of a hand-held router, drawn round the pointer: where it would stand, and what is under it.
    void setBaseShown(bool shown);
    bool isBaseShown() const { return m_baseShown; }
    /// Lines drawn bolder, as a step of work names them, and a place ringed; out of view, it is brought to the middle.
    void pointOut(const std::vector<LineId>& lines, std::optional<Point> at);
    /// What a form would lay, shown until the next.
    void foresee(const InHand& shown);
    /// Sheets of paper laid on the panel, in view with it, until others or none are.
    void laySheets(const Drawing& sheets);

    QSize sizeHint() const override { return {800, 560}; }
    QSize minimumSizeHint() const override { return {200, 240}; }

Q_SIGNALS:
    void scaleChanged();
    void layersChanged();
    void typedOver(const QString& text);   ///< a digit typed while something is in hand
    void escaped();                        ///< Esc with nothing in hand
    void fieldAsked();                     ///< Return: to the entry line
    void deleteAsked();
    void findingClicked(std::size_t index);  ///< its sign, with the pick tool

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool focusNextPrevChild(bool next) override;

private:
    Hand handAt(QPointF pixel, Qt::KeyboardModifiers modifiers) const;
    Hand keyHand(Qt::KeyboardModifiers modifiers) const;
    bool pointWithKeys(QKeyEvent* event);
    bool moveKeyPoint(QKeyEvent* event);
    bool growWithKeys(QKeyEvent* event);

    // Looking, in plan_view_looking.cpp.
    QRectF roomForPanel() const;
    void fitInto(const QRectF& room, const Box& box);
    void bringIntoView(Point place);
    bool beginPan(QMouseEvent* event);
    void panTo(QPointF pixel);
    void endPan();
    void holdSpace(bool held);
    void dressPointer();
    bool panWithKeys(QKeyEvent* event);

    // The plan without what the hand does.
    void paintGround(QPainter& painter) const;
    bool keepsGround();
    void renewGround();
    std::optional<QPointF> pointer() const;
    int headingHeight() const;
    void paintHeading(QPainter& painter) const;
    void paintPicked(QPainter& painter) const;
    void paintHand(QPainter& painter, const InHand& shown) const;
    void paintNote(QPainter& painter, Point at, const QString& note) const;
    void paintKeyPoint(QPainter& painter) const;
    void paintBase(QPainter& painter) const;
    void setScale(const ViewScale& scale);
    std::optional<std::size_t> signUnder(QPointF pixel) const;

    Session& m_session;
    Selection& m_selection;
    Tool* m_tool = nullptr;
    ViewScale m_scale;
    bool m_fitted = true;  // keeps the whole panel in view until zoomed by hand
    PlanLayers m_layers;
    QPixmap m_ground;  // null: none is kept
    bool m_groundWasPainted = false;
    std::optional<CutDirection> m_draggedCut;
    std::optional<QPointF> m_panFrom;
    std::optional<QPointF> m_signFrom;  // where the button went down
    bool m_spaceHeld = false;
    bool m_baseShown = false;
    std::optional<Point> m_keyPoint;  // the pointer that the arrow keys move
    InHand m_foreseen;
    Drawing m_sheets;
    std::vector<LineId> m_pointedOut;
    std::optional<Point> m_pointedAt;
};

}  // namespace kerfwall
