// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet_form.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "ui/length_field.h"
#include "ui/session.h"

namespace kerfwall {

SheetForm::SheetForm(const QString& title, Session& session, QWidget* parent)
    : QFrame(parent), m_session(session), m_grid(new QGridLayout(this)), m_trouble(new QLabel(this)) {
    m_grid->setContentsMargins(0, 0, 0, 18);
    m_grid->setVerticalSpacing(6);
    m_grid->setColumnStretch(0, 1);
    auto* heading = new QLabel(title, this);
    heading->setObjectName(QStringLiteral("sectionTitle"));
    auto* done = new QPushButton(tr("Done"), this);
    done->setObjectName(QStringLiteral("formDone"));
    m_grid->addWidget(heading, 0, 0);
    m_grid->addWidget(done, 0, 1);
    m_trouble->setWordWrap(true);
    m_trouble->setObjectName(QStringLiteral("formTrouble"));
    m_trouble->hide();
    m_grid->addWidget(m_trouble, 1, 0, 1, 2);
    connect(done, &QPushButton::clicked, this, &SheetForm::closeAsked);
    connect(&m_session, &Session::changed, this, &SheetForm::refresh);
    hide();
}

void SheetForm::addRow(QLabel* label, QWidget* field) {
    const int row = m_grid->rowCount();
    label->setBuddy(field);
    field->setAccessibleName(label->text());
    field->setFixedWidth(150);
    m_grid->addWidget(label, row, 0);
    m_grid->addWidget(field, row, 1);
}

void SheetForm::addLength(const LengthRow& row, const std::function<bool(const Project&)>& isShown) {
    auto* field = new LengthField(this);
    auto* label = new QLabel(row.label, this);
    field->setObjectName(row.objectName);
    field->setRange(row.low, row.high, row.range);
    field->setMayBeEmpty(row.mayBeEmpty);
    field->setPlaceholderText(row.emptyMeans);
    addRow(label, field);
    m_lengths.push_back({row, field, label, isShown});
    connect(field, &LengthField::entered, this, [this, row](std::optional<double> value) { enter(row, value); });
    connect(field, &LengthField::troubled, this, [this](const QString& sentence) {
        m_trouble->setText(sentence);
        m_trouble->setVisible(!sentence.isEmpty());
    });
    connect(field, &LengthField::left, this, &SheetForm::closeAsked);
    refresh();
}

void SheetForm::enter(const LengthRow& row, std::optional<double> value) {
    if (!value && !row.mayBeEmpty) return;
    if (value == row.read(m_session.project())) return;
    Project next = m_session.project();
    row.write(next, value);
    m_session.change(row.step, next);
}

void SheetForm::addChoice(const ChoiceRow& row) {
    auto* box = new QComboBox(this);
    box->setObjectName(row.objectName);
    addRow(new QLabel(row.label, this), box);
    m_choices.push_back({row, box});
    connect(box, &QComboBox::activated, this, [this, row](int option) {
        Project next = m_session.project();
        row.write(next, option);
        m_session.change(row.step, next);
    });
    refresh();
}

void SheetForm::addTitle() {
    m_title = new QLineEdit(this);
    m_title->setObjectName(QStringLiteral("projectTitle"));
    addRow(new QLabel(tr("Title"), this), m_title);
    connect(m_title, &QLineEdit::editingFinished, this, [this] {
        Project next = m_session.project();
        next.title = m_title->text().trimmed().toStdString();
        m_session.change(tr("Name the template"), next);
    });
    refresh();
}

void SheetForm::refresh() {
    const Project& project = m_session.project();
    for (const Length& length : m_lengths) {
        const bool shown = !length.isShown || length.isShown(project);
        length.field->setVisible(shown);
        length.label->setVisible(shown);
        length.field->setUnits(project.units);
        length.field->show(length.row.read(project));
    }
    for (const Choice& choice : m_choices) {
        const QStringList options = choice.row.options(project);
        while (choice.box->count() < options.size()) choice.box->addItem({});
        for (int i = 0; i < options.size(); ++i) choice.box->setItemText(i, options[i]);
        choice.box->setCurrentIndex(choice.row.read(project));
    }
    if (m_title && !m_title->hasFocus()) m_title->setText(QString::fromStdString(project.title));
}

void SheetForm::focusFirst() {
    if (m_title) return m_title->setFocus(Qt::ShortcutFocusReason);
    if (!m_lengths.empty()) m_lengths.front().field->setFocus(Qt::ShortcutFocusReason);
}

}  // namespace kerfwall
