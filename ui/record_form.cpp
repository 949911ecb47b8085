// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/record_form.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/says/tool_ranges.h"
#include "core/shop/measurable.h"
#include "core/shop/measured_words.h"
#include "core/shop/mends.h"
#include "ui/form_row.h"
#include "ui/length_field.h"
#include "ui/quiet_box.h"
#include "ui/remedy_button.h"
#include "ui/selection.h"
#include "ui/session.h"

namespace kerfwall {
namespace {

constexpr int kFieldWidth = 150;
constexpr int kChoiceLetters = 24;
constexpr int kSettleTime = 150;  // ms, while something is in hand
constexpr double kThinnestLayer = 0.01, kThickestLayer = 2;  // mm; tape and card

QLabel* wordsIn(const QString& text, const char* name, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setObjectName(QString::fromLatin1(name));
    label->setWordWrap(true);
    return label;
}

}  // namespace

RecordForm::RecordForm(Session& session, Selection& selection, QWidget* parent)
    : QFrame(parent),
      m_session(session),
      m_selection(selection),
      m_grid(new QGridLayout(this)),
      m_what(new QuietBox(this)),
      m_size(new LengthField(this)),
      m_layer(new LengthField(this)),
      m_trouble(new QLabel(this)),
      m_entries(new QVBoxLayout) {
    setObjectName(QStringLiteral("recordForm"));
    m_grid->setContentsMargins(0, 0, 0, 18);
    m_grid->setVerticalSpacing(6);
    m_grid->setColumnStretch(0, 1);
    addHeader();
    addChoice();
    addRow(tr("It was found to be"), m_size, "recordSize");
    m_layer->setRange(kThinnestLayer, kThickestLayer, tr("A layer is 0.01 to 2 mm thick."));
    addRow(tr("One layer of tape is"), m_layer, "recordLayer");
    m_trouble->setObjectName(QStringLiteral("recordTrouble"));
    m_trouble->setProperty("trouble", true);
    m_trouble->setWordWrap(true);
    m_grid->addWidget(m_trouble, m_grid->rowCount(), 0, 1, 2);
    m_grid->addLayout(m_entries, m_grid->rowCount(), 0, 1, 2);
    tell({});
    m_settled.setSingleShot(true);
    connectFields();
    hide();
}

void RecordForm::connectFields() {
    connect(&m_settled, &QTimer::timeout, this, &RecordForm::refresh);
    connect(&m_session, &Session::changed, this, &RecordForm::follow);
    connect(&m_selection, &Selection::changed, this, &RecordForm::choosePicked);
    connect(m_size, &LengthField::entered, this, &RecordForm::enter);
    connect(m_layer, &LengthField::entered, this, [this](std::optional<double> value) {
        if (value) m_tape.thickness = *value;
        refresh();
    });
    for (LengthField* field : {m_size, m_layer}) {
        connect(field, &LengthField::troubled, this, &RecordForm::tell);
        connect(field, &LengthField::left, this, &RecordForm::closeAsked);
    }
}

void RecordForm::addChoice() {
    auto* asked = new QLabel(tr("What was measured, with the size that is drawn"), this);
    asked->setBuddy(m_what);
    m_what->setObjectName(QStringLiteral("recordWhat"));
    m_what->setAccessibleName(asked->text());
    m_what->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_what->setMinimumContentsLength(kChoiceLetters);
    const int at = m_grid->rowCount();
    m_grid->addWidget(asked, at, 0, 1, 2);
    m_grid->addWidget(m_what, at + 1, 0, 1, 2);
}

void RecordForm::addHeader() {
    auto* heading = new QLabel(tr("Measured while making"), this);
    heading->setObjectName(QStringLiteral("sectionTitle"));
    auto* done = new QPushButton(tr("Done"), this);
    done->setObjectName(QStringLiteral("formDone"));
    m_grid->addWidget(heading, 0, 0);
    m_grid->addWidget(done, 0, 1);
    connect(done, &QPushButton::clicked, this, &RecordForm::closeAsked);
}

void RecordForm::addRow(const QString& words, QWidget* field, const char* name) {
    auto* label = new QLabel(words, this);
    label->setBuddy(field);
    field->setObjectName(QString::fromLatin1(name));
    field->setAccessibleName(words);
    field->setFixedWidth(kFieldWidth);
    const int at = m_grid->rowCount();
    m_grid->addWidget(label, at, 0);
    m_grid->addWidget(field, at, 1);
}

void RecordForm::tell(const QString& sentence) {
    m_trouble->setText(sentence);
    m_trouble->setVisible(!sentence.isEmpty());
}

void RecordForm::follow() {
    if (!isHidden()) m_settled.start(m_session.isInHand() ? kSettleTime : 0);
}

void RecordForm::showEvent(QShowEvent* event) {
    QFrame::showEvent(event);
    refresh();
    choosePicked();
}

void RecordForm::refresh() {
    if (isHidden()) return;
    if (m_session.isInHand()) return m_settled.start(kSettleTime);
    m_settled.stop();
    fillChoice();
    m_size->setUnits(m_session.project().units);
    m_layer->setUnits(Units::Millimetres);
    m_layer->show(m_tape.thickness);
    if (m_laid) {
        m_entries->removeWidget(m_laid);
        m_laid->hide();
        m_laid->deleteLater();
    }
    m_laid = new QWidget(this);
    auto* column = new QVBoxLayout(m_laid);
    column->setContentsMargins(0, 6, 0, 0);
    for (const MeasuredAnswer& answer : measuredAnswers(m_session.project(), m_session.solved(), m_session.order(), m_tape)) lay(answer);
    m_entries->addWidget(m_laid);
    m_laid->show();
}

void RecordForm::fillChoice() {
    std::vector<Record> now = measurables(m_session.project(), m_session.solved(), m_session.order());
    QStringList words;
    for (const Record& each : now) words << QString::fromStdString(recordWords(m_session.project(), each));
    QStringList there;
    for (int i = 0; i < m_what->count(); ++i) there << m_what->itemText(i);
    m_choices = std::move(now);
    m_size->setEnabled(!m_choices.empty());
    if (there == words) return;
    const int chosen = m_what->currentIndex();
    m_what->clear();
    m_what->addItems(words);
    m_what->setCurrentIndex(std::clamp(chosen, words.isEmpty() ? -1 : 0, static_cast<int>(words.size()) - 1));
    if (m_choices.empty()) tell(tr("Mark waste between lines: what their walls measure is entered here."));
}

/// A line that is picked is what is measured next.
void RecordForm::choosePicked() {
    if (isHidden() || m_selection.line().empty()) return;
    const auto own = std::ranges::find_if(m_choices, [&](const Record& each) { return each.line && each.line->first == m_selection.line(); });
    if (own != m_choices.end()) m_what->setCurrentIndex(static_cast<int>(own - m_choices.begin()));
}

void RecordForm::enter(std::optional<double> value) {
    const int what = m_what->currentIndex();
    if (!value || what < 0) return;
    Record entry = m_choices.at(static_cast<std::size_t>(what));
    if (entry.bore && !kDrillDiameter.holds(*value)) return tell(tr("A bore is 1 to 300 mm across."));
    entry.measured = *value;
    tell({});
    Project next = m_session.project();
    next.record.push_back(entry);
    m_session.change(tr("Enter what was measured"), next);
    m_size->showAnyway(std::nullopt);
    refresh();
}

void RecordForm::lay(const MeasuredAnswer& answer) {
    const Project& project = m_session.project();
    const Record& entry = project.record.at(answer.record);
    auto* column = qobject_cast<QVBoxLayout*>(m_laid->layout());
    auto* head = new QHBoxLayout;
    auto* takeAway = new QPushButton(tr("Take it out"), m_laid);
    takeAway->setObjectName(QStringLiteral("recordTakeOut%1").arg(answer.record));
    const QString words = QString::fromStdString(recordWords(project, entry));
    takeAway->setAccessibleName(tr("Take %1 out of the record").arg(words));
    QLabel* heading = wordsIn(words, "groupTitle", m_laid);
    heading->setIndent(0);
    head->addWidget(heading, 1);
    head->addWidget(takeAway);
    column->addLayout(head);
    column->addWidget(wordsIn(QString::fromStdString(answer.text), "recordAnswer", m_laid));
    connect(takeAway, &QPushButton::clicked, this, [this, record = answer.record] { takeOut(record); });
    if (answer.stands == Stands::Past && entry.line && !answer.isPassed) layOffers(answer.record, *column);
}

void RecordForm::layOffers(std::size_t record, QVBoxLayout& column) {
    const std::vector<Remedy> offers = mends(m_session.project(), m_session.solved(), record);
    column.addWidget(wordsIn(offers.empty() ? tr("No other wall can go along with it: another is out already, or it would do harm elsewhere.")
                                             : tr("For walls that are not cut out to their lines yet:"),
                              "faint", m_laid));
    for (const Remedy& offer : offers) {
        auto* button = new RemedyButton(QString::fromStdString(offer.words), m_laid);
        button->setAccessibleDescription(tr("Lays the lines so; undo takes it back."));
        column.addWidget(button);
        connect(button, &RemedyButton::clicked, this, [this, offer] {
            m_session.changeWhole(QString::fromStdString(offer.words), offer.project);
            refresh();
        });
    }
}

void RecordForm::takeOut(std::size_t record) {
    Project next = m_session.project();
    if (record >= next.record.size()) return;
    next.record.erase(next.record.begin() + static_cast<std::ptrdiff_t>(record));
    m_session.change(tr("Take a measure out of the record"), next);
    refresh();
}

void RecordForm::focusFirst() { m_what->setFocus(Qt::ShortcutFocusReason); }

}  // namespace kerfwall
