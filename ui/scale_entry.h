// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <array>
#include <optional>

#include "core/drawing/print_scale.h"

class QGridLayout;
class QLabel;
class QPushButton;

namespace kerfwall {

class LengthField;
class Session;

/// What a ruler says of the scale bars of a print, for each axis by itself: it becomes the correction of the next print, kept in
/// the project and for the printer.
class ScaleEntry : public QFrame {
    Q_OBJECT

public:
    explicit ScaleEntry(Session& session, QWidget* parent = nullptr);

    /// The sheets that are printed, and on which printer ("": elsewhere).
    void show(const Sheets& sheets, const QString& printer);
    /// What is measured from now on is measured off a print with the correction of now: readings are taken away.
    void measureAnew();

Q_SIGNALS:
    void closeAsked();

private:
    enum Axis { Level, Upright };
    struct Row {
        LengthField* nominal;
        LengthField* measured;
    };
    void addRow(const QString& label, Axis axis, const char* name);
    void take(Axis axis, std::optional<double> measured);
    void tell(const QString& sentence);
    void takeKept();
    void refresh();
    PrintScale scale() const;
    bool isRead() const;
    void setScale(const QString& step, const PrintScale& scale);

    Session& m_session;
    QGridLayout* m_grid;
    std::array<Row, 2> m_rows{};
    QLabel* m_trouble;
    QLabel* m_now;
    QPushButton* m_useKept;
    QPushButton* m_none;
    Sheets m_sheets;
    QString m_printer;
    PrintScale m_printed;  // the correction of the print that is measured
};

}  // namespace kerfwall
