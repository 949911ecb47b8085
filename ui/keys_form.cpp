// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/keys_form.h"

#include <QAction>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QVBoxLayout>

namespace kerfwall {
namespace {

constexpr int kKeyWidth = 110;

/// A menu's words without the mark of its letter and without the dots.
QString plainWords(QString words) {
    words.remove(QLatin1Char('&'));
    if (words.endsWith(QChar(0x2026))) words.chop(1);
    return words;
}

QString keysOf(const QAction& action) {
    QStringList keys;
    for (const QKeySequence& key : action.shortcuts()) {
        const QString text = key.toString(QKeySequence::NativeText);
        if (!text.isEmpty()) keys << text;
    }
    return keys.join(QLatin1String(", "));
}

}  // namespace

KeysForm::KeysForm(const QMenuBar& menus, QWidget* parent) : QFrame(parent), m_menus(menus), m_column(new QVBoxLayout(this)) {
    setObjectName(QStringLiteral("keysForm"));
    m_column->setContentsMargins(0, 0, 0, 18);
    auto* head = new QHBoxLayout;
    auto* heading = new QLabel(tr("Keys"), this);
    heading->setObjectName(QStringLiteral("sectionTitle"));
    auto* done = new QPushButton(tr("Done"), this);
    done->setObjectName(QStringLiteral("keysDone"));
    head->addWidget(heading, 1);
    head->addWidget(done);
    m_column->addLayout(head);
    connect(done, &QPushButton::clicked, this, &KeysForm::closeAsked);
    hide();
}

void KeysForm::focusFirst() { findChild<QPushButton*>(QStringLiteral("keysDone"))->setFocus(Qt::ShortcutFocusReason); }

void KeysForm::showEvent(QShowEvent* event) {
    QFrame::showEvent(event);
    fill();
}

void KeysForm::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) return Q_EMIT closeAsked();
    QFrame::keyPressEvent(event);
}

/// Anew each time: what a menu offers changes with what is picked.
void KeysForm::fill() {
    delete m_list;
    m_list = new QWidget(this);
    auto* list = new QVBoxLayout(m_list);
    list->setContentsMargins(0, 0, 0, 0);
    m_column->addWidget(m_list);
    QGridLayout* plan = addSection(tr("Over the plan"));
    addKey(plan, tr("1 to 8"), tr("take a tool"));
    addKey(plan, tr("Ctrl+1 to Ctrl+8"), tr("take a tool while something is in hand and numbers go to the entry line"));
    addKey(plan, tr("Arrows"), tr("move what is picked, else a pointer; with Shift ten steps at once"));
    addKey(plan, tr("Space"), tr("clicks with the pointer; held, dragging moves the sheet"));
    addKey(plan, tr("Tab"), tr("goes from one thing to the next"));
    addKey(plan, tr("Enter"), tr("leads to the entry line"));
    addKey(plan, tr("Esc"), tr("leaves what is in hand"));
    addKey(plan, tr("+ and \u2212"), tr("make a bore, a hole's depth or a fence larger or smaller"));
    addKey(plan, tr("Ctrl+arrows"), tr("move the sheet, as the wheel does"));
    addKey(plan, tr("Ctrl with + or \u2212"), tr("comes nearer or goes back, as Ctrl with the wheel does"));
    for (const QAction* menu : m_menus.actions()) {
        if (menu->menu()) addMenu(addSection(plainWords(menu->text())), *menu->menu());
    }
}

QGridLayout* KeysForm::addSection(const QString& heading) {
    auto* title = new QLabel(heading, m_list);
    title->setObjectName(QStringLiteral("groupTitle"));
    auto* rows = new QGridLayout;
    rows->setHorizontalSpacing(12);
    rows->setVerticalSpacing(3);
    rows->setColumnStretch(1, 1);
    auto* list = static_cast<QVBoxLayout*>(m_list->layout());
    list->addSpacing(8);
    list->addWidget(title);
    list->addLayout(rows);
    return rows;
}

void KeysForm::addKey(QGridLayout* rows, const QString& key, const QString& words) {
    auto* does = new QLabel(words, m_list);
    does->setWordWrap(true);
    auto* says = new QLabel(key, m_list);
    says->setObjectName(QStringLiteral("key"));
    says->setWordWrap(true);
    says->setMinimumWidth(kKeyWidth);
    const int row = rows->rowCount();
    rows->addWidget(says, row, 0, Qt::AlignTop);
    rows->addWidget(does, row, 1);
}

void KeysForm::addMenu(QGridLayout* rows, const QMenu& menu) {
    for (const QAction* action : menu.actions()) {
        if (action->menu()) addMenu(rows, *action->menu());
        const QString keys = keysOf(*action);
        if (!keys.isEmpty()) addKey(rows, keys, plainWords(action->text()));
    }
}

}  // namespace kerfwall
