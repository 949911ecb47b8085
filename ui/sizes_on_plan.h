// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QRectF>
#include <functional>
#include <optional>
#include <vector>

#include "core/drawing/drawing.h"

class QFrame;
class QLabel;

namespace kerfwall {

class LengthField;
class PlanView;
class Selection;
class Session;

/// The sizes on the plan, to be set where they stand: pointed at they show it, clicked they become a field.
class SizesOnPlan : public QObject {
    Q_OBJECT

public:
    /// `isFree`: whether the hand has nothing else to do with a click.
    SizesOnPlan(Session& session, Selection& selection, PlanView& plan, std::function<bool()> isFree);

    /// Opens the field of the next size of what is picked, or of any size where nothing is.
    /// Gives     false where there is none.
    bool openNext();

Q_SIGNALS:
    void pointed(const QString& sentence);  ///< "" when none is pointed at any more
    void closed();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    std::vector<Dimension> sizes() const;
    QRectF rectOf(const Dimension& size) const;
    std::optional<Dimension> sizeAt(QPointF pixel) const;
    void point(const std::optional<Dimension>& size);
    void open(const Dimension& size);
    void set(double value);
    void tell(const QString& trouble);
    void close();

    Session& m_session;
    Selection& m_selection;
    PlanView& m_plan;
    std::function<bool()> m_isFree;
    QFrame* m_frame;      // round the size pointed at
    LengthField* m_field;
    QLabel* m_trouble;    // beside the field
    std::optional<Dimension> m_pointed;
    std::optional<Dimension> m_open;
    bool m_pressed = false;  // a press was taken: its release belongs to it
};

}  // namespace kerfwall
