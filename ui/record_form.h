// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <QTimer>
#include <vector>

#include "core/shop/measured.h"

class QGridLayout;
class QLabel;
class QVBoxLayout;

namespace kerfwall {

class LengthField;
class QuietBox;
class Selection;
class Session;

/// What was measured while making, on the job card: a size is entered, and under it stands what the plan answers, with
/// what can be done about a wall past its line to be pressed. Each entry is a step of its own.
class RecordForm : public QFrame {
    Q_OBJECT

public:
    RecordForm(Session& session, Selection& selection, QWidget* parent = nullptr);

    void focusFirst();

Q_SIGNALS:
    void closeAsked();

protected:
    void showEvent(QShowEvent* event) override;

private:
    void addHeader();
    void addChoice();
    void addRow(const QString& label, QWidget* field, const char* name);
    void connectFields();
    void follow();
    void refresh();
    void fillChoice();
    void choosePicked();
    void enter(std::optional<double> value);
    void lay(const MeasuredAnswer& answer);
    void layOffers(std::size_t record, QVBoxLayout& column);
    void takeOut(std::size_t record);
    void tell(const QString& sentence);

    Session& m_session;
    Selection& m_selection;
    QGridLayout* m_grid;
    QuietBox* m_what;
    LengthField* m_size;
    LengthField* m_layer;
    QLabel* m_trouble;
    QVBoxLayout* m_entries;
    QWidget* m_laid = nullptr;  // the entries as they stand
    std::vector<Record> m_choices;
    Tape m_tape;
    QTimer m_settled;  // answers are worked out once the drawing rests
};

}  // namespace kerfwall
