// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/drawing/plan_drawing.h"
#include "core/drawing/side_view.h"
#include "ui/view_scale.h"

namespace kerfwall {

class Session;

/// The panel cut at a cutting line, on the plan's scale and joined to it: under the plan and seen from the bottom
/// edge, or to its right and seen from the right edge. Arrow keys move the cutting line.
class SideViewPanel : public QWidget {
    Q_OBJECT

public:
    SideViewPanel(Session& session, CutDirection direction, QWidget* parent = nullptr);

    CutDirection direction() const { return m_direction; }
    /// Follows the plan's scale and place.
    void follow(const ViewScale& plan);
    /// Shows what the plan's layers show.
    void setLayers(const PlanLayers& layers);
    /// How many times larger heights are drawn than lengths; under 1: smaller.
    double exaggeration() const;

    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    bool isLevel() const { return m_direction == CutDirection::Level; }
    void settleSize();
    int beforeFace() const;  // pixels; upright only
    struct Heading {
        QString title;
        QString note;
    };
    QString heightsText() const;  // "" where they are true to scale
    QString cutText() const;
    Heading headingWithin(double room) const;
    void paintHeadingInLine(QPainter& painter) const;
    void paintHeadingInColumn(QPainter& painter) const;
    void paintProjection(QPainter& painter) const;

    Session& m_session;
    CutDirection m_direction;
    ViewScale m_plan;
    PlanLayers m_layers;
};

}  // namespace kerfwall
