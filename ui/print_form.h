// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <functional>

#include "core/drawing/drawing.h"
#include "ui/print_wish.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace kerfwall {

class QuietBox;
class ScaleEntry;
class Session;
class SheetForm;

/// How the pattern is printed, laid on the job card: paper, margins, printer, how true it prints, and how many sheets it takes.
/// While it is shown its sheets lie on the plan.
class PrintForm : public QFrame {
    Q_OBJECT

public:
    using PrinterNames = std::function<QStringList()>;

    explicit PrintForm(Session& session, QWidget* parent = nullptr);

    const PrintWish& wish() const { return m_wish; }
    /// The paper as it lies.
    Paper laidPaper() const;
    /// The printer chosen; "": none, the PDF is printed elsewhere.
    const QString& printer() const { return m_printer; }
    bool hasPrinters() const { return m_names.size() > 1; }
    /// Who is asked which printers there are; the system's unless set.
    void askForPrinters(const PrinterNames& names);
    void focusFirst();
    /// A print or its PDF was made as it is set: what is measured next is measured off it.
    void tellPrinted();

Q_SIGNALS:
    void closeAsked();
    void printAsked();
    void pdfAsked();
    void sheetsLaid(const Drawing& sheets);  ///< to be shown on the plan; empty: no longer

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void addHeader();
    void addRows();
    void addPrinters();
    void addButtons();
    void fillPrinters();
    void takePrinter(const QString& printer);
    void refresh();
    Sheets sheetsOf(const Project& project) const;

    Session& m_session;
    PrintWish m_wish;
    QVBoxLayout* m_column;
    SheetForm* m_rows = nullptr;
    QuietBox* m_printers = nullptr;
    QLabel* m_sheets = nullptr;
    ScaleEntry* m_scale = nullptr;
    PrinterNames m_ask;
    QStringList m_names;  // printers, and "" for none
    QString m_printer;
};

}  // namespace kerfwall
