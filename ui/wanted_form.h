// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <optional>
#include <vector>

#include "core/shop/placed_wish.h"
#include "core/shop/stock_panels.h"
#include "ui/tool.h"

class QComboBox;
class QGridLayout;
class QLabel;
class QPushButton;

namespace kerfwall {

class CornerEntry;
class CornerTool;
class LengthField;
class Selection;
class Session;

/// What is wanted in the work, to be filled in on the job card: a window, a leg frame or a polygon, and where it lies. Says
/// and shows at once what would be laid, or beside the field in question why not. Laying it is one step.
class WantedForm : public QFrame {
    Q_OBJECT

public:
    enum Shape { WindowShape, LegsShape, PolygonShape };

    WantedForm(Session& session, Selection& selection, QWidget* parent = nullptr);

    void chooseShape(Shape shape);
    /// A polygon with these corners, panel frame, to be looked at and laid. At most kMostCorners.
    void takeCorners(const std::vector<Point>& corners);
    void focusFirst();
    /// The hand that clicks corners on the plan.
    Tool* cornerTool() const;
    void showClicking(bool clicking);

Q_SIGNALS:
    void closeAsked();
    void laid();  ///< it stands on the sheet
    /// What would be laid, for the plan to show.
    void foreseen(const kerfwall::InHand& shown);
    /// The corner tool is to be taken in hand, or put back.
    void clickAsked(bool clicking);

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    enum class Entry { Width, Height, Span, LegHeight, LegTop, LegFoot, InnerLean, OuterLean, Corner, WorkWidth, WorkHeight, Across, Up, Feet };
    struct Row {
        Entry entry;
        QWidget* label;
        LengthField* field;
        QLabel* trouble;              // under the field; hidden while there is none
        std::optional<double> typed;  // mm or degrees; none: empty
        bool isUnreadable = false;
        bool isShown = true;
    };
    struct RowText {
        Entry entry;
        QString label;
        QString name;
        QString emptyMeans;
        bool isAngle = false;
    };
    void makeHead();
    void makeRows();
    void makePlaceRows();
    void makeFoot();
    void addRow(const RowText& text, QWidget* label = nullptr);
    void connectRow(LengthField* field, Entry entry);
    void connectCorners();
    QComboBox* addChoice(const QString& name, const QString& said);
    Row& row(Entry entry);
    std::optional<double> typed(Entry entry) const;
    Shape shape() const;
    bool isShown(Entry entry) const;
    Entry entryFor(WishPart part) const;

    /// The wish as it is filled in; none while a size is missing or cannot be read.
    std::optional<Wish> wish() const;
    std::optional<Wish> legsWish() const;
    std::optional<Wish> polygonWish() const;
    static bool isMeasured(const QComboBox& from);  ///< a distance is to be typed with it
    std::optional<WishPlace> place() const;
    bool isOnUnknownWork() const;

    void refresh();
    void showRows();
    void showAnswer(const Wish& wish, const WishPlace& place);
    void tellRefusal(const WishRefusal& refusal);
    void tellCorners();
    void foresee(const std::expected<LaidWish, WishRefusal>* laid);
    void offerSteering(const Wish& wish, const WishPlace& place);
    void offerPanels(const std::optional<Blank>& goodBlank);
    void takePanel(const StockPanel& panel);
    void lay(const Project& from, bool withOtherTools);
    void endClicking();

    Session& m_session;
    QGridLayout* m_grid;
    std::vector<Row> m_rows;
    QComboBox* m_shape = nullptr;
    CornerEntry* m_corners = nullptr;
    CornerTool* m_cornerTool = nullptr;
    QComboBox* m_placedOn = nullptr;
    QComboBox* m_acrossFrom = nullptr;
    QComboBox* m_upFrom = nullptr;
    QLabel* m_answer = nullptr;
    QPushButton* m_lay = nullptr;
    QPushButton* m_other = nullptr;
    QPushButton* m_blank = nullptr;
    QPushButton* m_fromRack = nullptr;
    std::optional<Steering> m_offered;
    std::optional<StockPanel> m_offeredBlank;
    std::optional<StockPanel> m_offeredPanel;
};

}  // namespace kerfwall
