// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <vector>

#include "ui/line_rows.h"

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;

namespace kerfwall {

class LengthField;
class Selection;
class Session;

/// How the line that is picked was laid, and what it is for, to be changed on the job card. Each entry is a step of its own;
/// what cannot be is refused in one sentence on the form.
class LineForm : public QFrame {
    Q_OBJECT

public:
    LineForm(Session& session, Selection& selection, QWidget* parent = nullptr);

    void focusFirst();

Q_SIGNALS:
    void closeAsked();

protected:
    void showEvent(QShowEvent* event) override;

private:
    struct Row {
        LineRow row;
        QLabel* label = nullptr;
        QLineEdit* words = nullptr;
        QComboBox* choice = nullptr;
        LengthField* number = nullptr;
        QWidget* widget() const;
    };
    void addRow(const LineRow& row);
    void refresh();
    void refreshRow(const Row& row, const LineView& view);
    void set(const LineRow& row, const RowValue& value);
    void tell(const QString& sentence);
    const LayoutLine* line() const;

    Session& m_session;
    Selection& m_selection;
    QGridLayout* m_grid;
    QLabel* m_heading;
    QLabel* m_trouble;
    std::vector<Row> m_rows;
    LineId m_shown;    // the line whose refusal may stand on the form
    QString m_refused;  // why the last entry was not taken
};

}  // namespace kerfwall
