// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet_form.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <cmath>

#include "core/says/typed_list.h"
#include "ui/leaving_text.h"
#include "ui/length_field.h"
#include "ui/quiet_box.h"
#include "ui/session.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr int kFieldWidth = 150;
constexpr int kLinesHeight = 92;

void tell(QLabel* trouble, const QString& sentence) {
    trouble->setText(sentence);
    trouble->setVisible(!sentence.isEmpty());
}

QString listText(const std::vector<double>& sizes, Units units) {
    QStringList parts;
    for (const double size : sizes) parts << sizeFor(size, units);
    return parts.join(QStringLiteral("; "));
}

}  // namespace

void LengthRow::setRange(const Range& allowed) {
    low = allowed.lowOpen ? std::nextafter(allowed.low, allowed.high) : allowed.low;
    high = allowed.highOpen ? std::nextafter(allowed.high, allowed.low) : allowed.high;
    range = QString::fromStdString(allowed.sentence());
    range = range.left(1).toUpper() + range.mid(1) + QLatin1Char('.');
}

SheetForm::SheetForm(const QString& title, Session& session, QWidget* parent, Kind kind)
    : QFrame(parent), m_session(session), m_grid(new QGridLayout(this)) {
    m_grid->setContentsMargins(0, 0, 0, kind == Kind::Whole ? 18 : 6);
    m_grid->setVerticalSpacing(6);
    m_grid->setColumnStretch(0, 1);
    if (kind == Kind::Whole) {
        auto* heading = new QLabel(title, this);
        heading->setObjectName(QStringLiteral("sectionTitle"));
        auto* done = new QPushButton(tr("Done"), this);
        done->setObjectName(QStringLiteral("formDone"));
        m_grid->addWidget(heading, 0, 0);
        m_grid->addWidget(done, 0, 1);
        connect(done, &QPushButton::clicked, this, &SheetForm::closeAsked);
        hide();
    } else if (!title.isEmpty()) {
        addHeading(title);
    }
    connect(&m_session, &Session::changed, this, &SheetForm::refresh);
}

void SheetForm::addHeading(const QString& title) {
    auto* heading = new QLabel(title, this);
    heading->setObjectName(QStringLiteral("groupTitle"));
    heading->setIndent(0);
    m_grid->addWidget(heading, m_grid->rowCount(), 0, 1, 2);
}

QLabel* SheetForm::lay(const FormRow& row, QWidget* field, const RowShown& isShown,
                       std::function<void(const Project&)> refreshField, bool isWide) {
    auto* label = new QLabel(row.label, this);
    auto* trouble = new QLabel(this);
    label->setBuddy(field);
    label->setWordWrap(true);
    field->setObjectName(row.objectName);
    field->setAccessibleName(row.label);
    trouble->setObjectName(row.objectName + QStringLiteral("Trouble"));
    trouble->setProperty("trouble", true);
    trouble->setWordWrap(true);
    trouble->hide();
    const int at = m_grid->rowCount();
    m_grid->addWidget(label, at, 0, 1, isWide ? 2 : 1);
    if (!isWide) field->setFixedWidth(kFieldWidth);
    m_grid->addWidget(field, isWide ? at + 1 : at, isWide ? 0 : 1, 1, isWide ? 2 : 1);
    m_grid->addWidget(trouble, at + 2, 0, 1, 2);
    m_rows.push_back({label, field, trouble, isShown, std::move(refreshField)});
    refresh();
    return trouble;
}

void SheetForm::addLength(const LengthRow& row, const RowShown& isShown) {
    auto* field = new LengthField(this);
    field->setRange(row.low, row.high, row.range);
    field->setMayBeEmpty(row.mayBeEmpty);
    field->setPlaceholderText(row.emptyMeans);
    if (row.isAngle) field->setKind(LengthField::Kind::Angle);
    QLabel* trouble = lay(row, field, isShown, [field, row](const Project& project) {
        field->setUnits(row.inMillimetres ? Units::Millimetres : project.units);
        field->show(row.read(project));
    });
    connect(field, &LengthField::entered, this, [=, this](std::optional<double> value) { enter(row, value, trouble); });
    connect(field, &LengthField::troubled, this, [trouble](const QString& sentence) { tell(trouble, sentence); });
    connect(field, &LengthField::left, this, &SheetForm::closeAsked);
}

void SheetForm::enter(const LengthRow& row, std::optional<double> value, QLabel* trouble) {
    tell(trouble, {});
    if (!value && !row.mayBeEmpty) return refresh();
    if (value == row.read(m_session.project())) return;
    Project next = m_session.project();
    row.write(next, value);
    const QString refusal = row.refusal ? row.refusal(next) : QString();
    if (!refusal.isEmpty()) {
        refresh();
        return tell(trouble, refusal);
    }
    m_session.change(row.step, next);
}

void SheetForm::addChoice(const ChoiceRow& row, const RowShown& isShown) {
    auto* box = new QuietBox(this);
    lay(row, box, isShown, [box, row](const Project& project) {
        const QStringList options = row.options(project);
        while (box->count() < options.size()) box->addItem({});
        while (box->count() > options.size()) box->removeItem(box->count() - 1);
        for (int i = 0; i < options.size(); ++i) box->setItemText(i, options[i]);
        box->setCurrentIndex(row.read(project));
    });
    connect(box, &QComboBox::activated, this, [this, row](int option) {
        Project next = m_session.project();
        row.write(next, option);
        m_session.change(row.step, next);
    });
}

void SheetForm::addText(const TextRow& row, const RowShown& isShown) {
    if (row.hasLines) return addLines(row, isShown);
    if (!row.offered.isEmpty()) return addOfferedText(row, isShown);
    addTypedText(row, isShown);
}

void SheetForm::addTypedText(const TextRow& row, const RowShown& isShown) {
    auto* field = new QLineEdit(this);
    QLabel* trouble = lay(row, field, isShown, [field, row](const Project& project) {
        if (!field->isModified()) field->setText(row.read(project));
    });
    connect(field, &QLineEdit::editingFinished, this, [=, this] {
        if (field->isModified() && isTaken(row, field->text(), trouble)) field->setModified(false);
    });
}

void SheetForm::addOfferedText(const TextRow& row, const RowShown& isShown) {
    auto* box = new QuietBox(this);
    box->setEditable(true);
    box->setInsertPolicy(QComboBox::NoInsert);
    box->addItems(row.offered);
    box->lineEdit()->setAccessibleName(row.label);
    QLabel* trouble = lay(row, box, isShown, [box, row](const Project& project) {
        if (!box->lineEdit()->isModified()) box->setEditText(row.read(project));
    });
    const auto finish = [=, this] {
        if (isTaken(row, box->currentText(), trouble)) box->lineEdit()->setModified(false);
    };
    connect(box, &QComboBox::activated, this, finish);
    connect(box->lineEdit(), &QLineEdit::editingFinished, this, finish);
}

void SheetForm::addLines(const TextRow& row, const RowShown& isShown) {
    auto* field = new LeavingText(this);
    field->setFixedHeight(kLinesHeight);
    QLabel* trouble = lay(row, field, isShown, [field, row](const Project& project) {
        const QString now = row.read(project);
        if (!field->document()->isModified() && now != field->toPlainText()) field->setPlainText(now);
    }, true);
    connect(field, &LeavingText::left, this, [=, this] {
        if (isTaken(row, field->toPlainText(), trouble)) field->document()->setModified(false);
    });
}

bool SheetForm::isTaken(const TextRow& row, const QString& text, QLabel* trouble) {
    Project next = m_session.project();
    const QString refusal = text == row.read(next) ? QString() : row.write(next, text);
    tell(trouble, refusal);
    if (refusal.isEmpty()) m_session.change(row.step, next);
    return refusal.isEmpty();
}

void SheetForm::addList(const ListRow& row, const RowShown& isShown) {
    auto* field = new QLineEdit(this);
    field->setPlaceholderText(tr("none"));
    QLabel* trouble = lay(row, field, isShown, [field, row](const Project& project) {
        if (!field->isModified()) field->setText(listText(row.read(project), project.units));
    });
    connect(field, &QLineEdit::editingFinished, this, [=, this] {
        if (!field->isModified() || !isTaken(row, field->text(), trouble)) return;
        field->setText(listText(row.read(m_session.project()), m_session.project().units));
    });
}

bool SheetForm::isTaken(const ListRow& row, const QString& text, QLabel* trouble) {
    Project next = m_session.project();
    const auto sizes = readLengths(text.toStdString(), next.units, row.range);
    tell(trouble, sizes ? QString() : QString::fromStdString(sizes.error()));
    if (!sizes) return false;
    row.write(next, *sizes);
    m_session.change(row.step, next);
    return true;
}

void SheetForm::refresh() {
    const Project& project = m_session.project();
    for (const Row& row : m_rows) {
        const bool shown = !row.isShown || row.isShown(project);
        row.label->setVisible(shown);
        row.field->setVisible(shown);
        if (!shown) row.trouble->hide();
        row.refresh(project);
    }
}

void SheetForm::focusFirst() {
    for (const Row& row : m_rows) {
        if (!row.field->isVisibleTo(this)) continue;
        return row.field->setFocus(Qt::ShortcutFocusReason);
    }
}

}  // namespace kerfwall
