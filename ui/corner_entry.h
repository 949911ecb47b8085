// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/says/corner_list.h"

class QLabel;
class QPlainTextEdit;
class QPushButton;

namespace kerfwall {

/// A list of corners to be typed, pasted, or clicked on the plan. Bare numbers count in the units that were shown when the
/// list was begun.
class CornerEntry : public QWidget {
    Q_OBJECT

public:
    explicit CornerEntry(QWidget* parent = nullptr);

    [[nodiscard]] CornerList read() const;
    void setUnits(Units units);
    void add(Point corner);
    /// In mm to a thousandth, whatever the units shown, in place of what stood there.
    void setCorners(const std::vector<Point>& corners);
    /// Takes the last line away; false where there is none.
    bool takeLast();
    void clear();
    /// Under the list; "" for none.
    void tell(const QString& trouble);
    void showClicking(bool clicking);

Q_SIGNALS:
    void changed();
    void clickAsked(bool clicking);  ///< on the plan
    void left();                     ///< Esc

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void showHead();

    QLabel* m_head;
    QPlainTextEdit* m_list;
    QLabel* m_trouble;
    QPushButton* m_click;
    Units m_units = Units::Millimetres;  // of the list
    Units m_shown = Units::Millimetres;
};

}  // namespace kerfwall
