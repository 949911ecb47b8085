// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print_form.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/drawing/mirrored.h"
#include "core/drawing/sheet_map.h"
#include "ui/pattern_checks.h"
#include "ui/print_rows.h"
#include "ui/printers.h"
#include "ui/quiet_box.h"
#include "ui/scale_entry.h"
#include "ui/session.h"
#include "ui/sheet_form.h"

namespace kerfwall {
namespace {

constexpr int kFewestLetters = 24;

}  // namespace

PrintForm::PrintForm(Session& session, QWidget* parent)
    : QFrame(parent), m_session(session), m_column(new QVBoxLayout(this)), m_ask(printersHere), m_printer(chosenPrinter()) {
    setObjectName(QStringLiteral("printForm"));
    m_column->setContentsMargins(0, 0, 0, 18);
    m_column->setSpacing(6);
    addHeader();
    addPrinters();
    addRows();
    m_sheets = new QLabel(this);
    m_sheets->setObjectName(QStringLiteral("printSheets"));
    m_sheets->setWordWrap(true);
    m_column->addWidget(m_sheets);
    addButtons();
    m_scale = new ScaleEntry(m_session, this);
    m_column->addWidget(m_scale);
    m_column->addWidget(new PatternChecks(m_session, this));
    connect(m_scale, &ScaleEntry::closeAsked, this, &PrintForm::closeAsked);
    connect(&m_session, &Session::changed, this, &PrintForm::refresh);
    connect(&m_session, &Session::opened, this, [this] {
        m_wish = {};
        tellPrinted();
    });
    hide();
}

void PrintForm::addHeader() {
    auto* head = new QGridLayout;
    head->setColumnStretch(0, 1);
    auto* heading = new QLabel(tr("Print the pattern"), this);
    heading->setObjectName(QStringLiteral("sectionTitle"));
    auto* done = new QPushButton(tr("Done"), this);
    done->setObjectName(QStringLiteral("printDone"));
    head->addWidget(heading, 0, 0);
    head->addWidget(done, 0, 1);
    m_column->addLayout(head);
    connect(done, &QPushButton::clicked, this, &PrintForm::closeAsked);
}

void PrintForm::addPrinters() {
    m_printers = new QuietBox(this);
    auto* label = new QLabel(tr("Printer"), this);
    label->setBuddy(m_printers);
    m_printers->setObjectName(QStringLiteral("printPrinter"));
    m_printers->setAccessibleName(label->text());
    m_printers->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_printers->setMinimumContentsLength(kFewestLetters);
    m_column->addWidget(label);
    m_column->addWidget(m_printers);
    connect(m_printers, &QComboBox::activated, this, [this](int index) { takePrinter(m_names.value(index)); });
}

void PrintForm::addRows() {
    m_rows = new SheetForm({}, m_session, this, SheetForm::Kind::Part);
    addPrintRows(*m_rows, {m_wish, m_printer, [this] { refresh(); }, [this](const Project& project) { return sheetsOf(project).paper; }});
    connect(m_rows, &SheetForm::closeAsked, this, &PrintForm::closeAsked);
    m_column->addWidget(m_rows);
}

void PrintForm::addButtons() {
    auto* buttons = new QHBoxLayout;
    const auto add = [&](const QString& text, const char* name, void (PrintForm::*asked)()) {
        auto* button = new QPushButton(text, this);
        button->setObjectName(QString::fromLatin1(name));
        buttons->addWidget(button);
        connect(button, &QPushButton::clicked, this, asked);
    };
    add(tr("P&rint…"), "printNow", &PrintForm::printAsked);
    add(tr("&Write the PDF…"), "printPdf", &PrintForm::pdfAsked);
    m_column->addLayout(buttons);
}

void PrintForm::askForPrinters(const PrinterNames& names) {
    m_ask = names;
    if (isVisible()) fillPrinters();
}

/// The last choice may be a printer that is not there today: then the PDF's.
void PrintForm::fillPrinters() {
    m_names = m_ask();
    m_names << QString();
    m_printers->clear();
    for (const QString& name : m_names) m_printers->addItem(name.isEmpty() ? tr("none here: the PDF, printed elsewhere") : name);
    const qsizetype chosen = m_names.indexOf(m_printer);
    m_printer = chosen < 0 ? QString() : m_printer;
    m_printers->setCurrentIndex(static_cast<int>(chosen < 0 ? m_names.size() - 1 : chosen));
}

void PrintForm::takePrinter(const QString& printer) {
    m_printer = printer;
    choosePrinter(printer);
    Project next = m_session.project();
    takeKeptScale(next, sheetsOf(next).paper, printer);
    next.printing.margin = std::max(next.printing.margin, leastMarginOf(printer, sheetsOf(next).paper));
    m_session.change(tr("Choose the printer"), next);
    refresh();
}

void PrintForm::showEvent(QShowEvent* event) {
    QFrame::showEvent(event);
    fillPrinters();
    tellPrinted();
}

void PrintForm::hideEvent(QHideEvent* event) {
    QFrame::hideEvent(event);
    Q_EMIT sheetsLaid({});
}

void PrintForm::refresh() {
    if (isHidden()) return;
    const Project& project = m_session.project();
    const Sheets sheets = sheetsOf(project);
    m_sheets->setText(sheetsInWords(project, sheets));
    m_scale->show(sheets, m_printer);
    const Drawing map = sheetMap(sheets);
    // The plan shows the layout face, the back's sheets lie the other way round under it.
    Q_EMIT sheetsLaid(project.printing.face == Face::Back ? mirrored(map, project.panel.width) : map);
}

Paper PrintForm::laidPaper() const { return sheetsOf(m_session.project()).paper; }

/// How the pattern is printed changes nothing of what is solved.
Sheets PrintForm::sheetsOf(const Project& project) const { return printSheets(project, m_session.solved(), m_wish); }

void PrintForm::tellPrinted() {
    m_scale->measureAnew();
    refresh();
}

void PrintForm::focusFirst() { m_printers->setFocus(Qt::ShortcutFocusReason); }

}  // namespace kerfwall
