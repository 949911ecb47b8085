// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/folded_list.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "ui/session.h"
#include "ui/sheet_form.h"

namespace kerfwall {
namespace {

constexpr int kIndent = 14;  // pixels

QString kindOf(const QString& line) { return line.section(QLatin1Char('\t'), 0, 0); }
QString wordsOf(const QString& line) { return line.section(QLatin1Char('\t'), 1); }

}  // namespace

FoldedList::FoldedList(Session& session, Sort sort, QWidget* parent)
    : QFrame(parent), m_session(session), m_sort(std::move(sort)), m_column(new QVBoxLayout(this)) {
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(2);
    connect(&m_session, &Session::changed, this, &FoldedList::refresh);
    refresh();
}

void FoldedList::refresh() {
    const QStringList lines = m_sort.lines(m_session.project());
    QStringList kinds;
    for (const QString& line : lines) kinds << kindOf(line);
    if (kinds != m_kinds) {
        m_kinds = kinds;
        build(lines);
    }
    for (std::size_t i = 0; i < m_heads.size(); ++i) {
        const QString words = wordsOf(lines[static_cast<qsizetype>(i)]);
        m_heads[i]->setText((m_open == i ? QStringLiteral("\u25be  ") : QStringLiteral("\u25b8  ")) + words);
        m_heads[i]->setAccessibleName(words);
        m_heads[i]->setChecked(m_open == i);
        m_heads[i]->setAccessibleDescription(m_open == i ? tr("unfolded") : tr("folded; press it for its fields"));
    }
}

void FoldedList::build(const QStringList& lines) {
    fold();
    for (QPushButton* head : m_heads) {
        head->hide();
        head->deleteLater();
    }
    m_heads.clear();
    for (std::size_t i = 0; i < static_cast<std::size_t>(lines.size()); ++i) {
        auto* head = new QPushButton(this);
        head->setObjectName(m_sort.name + QString::number(i));
        head->setProperty("fold", true);
        head->setCheckable(true);
        m_column->addWidget(head);
        head->show();
        m_heads.push_back(head);
        connect(head, &QPushButton::clicked, this, [this, i] { toggle(i); });
    }
}

void FoldedList::toggle(std::size_t index) {
    if (m_open != index) return unfold(index);
    fold();
    refresh();
}

void FoldedList::fold() {
    m_open.reset();
    if (!m_unfolded) return;
    m_unfolded->hide();
    m_unfolded->deleteLater();
    m_unfolded = nullptr;
}

void FoldedList::unfold(std::size_t index) {
    if (index >= m_heads.size()) return;
    fold();
    m_open = index;
    m_unfolded = new QFrame(this);
    auto* column = new QVBoxLayout(m_unfolded);
    column->setContentsMargins(kIndent, 2, 0, 8);
    SheetForm* form = m_sort.makeForm(index, m_unfolded);
    connect(form, &SheetForm::closeAsked, this, &FoldedList::closeAsked);
    auto* away = new QPushButton(m_sort.takeAway, m_unfolded);
    away->setObjectName(m_sort.name + QStringLiteral("TakeAway"));
    column->addWidget(form);
    column->addWidget(away, 0, Qt::AlignRight);
    connect(away, &QPushButton::clicked, this, [this, index] { remove(index); });
    m_column->insertWidget(m_column->indexOf(m_heads[index]) + 1, m_unfolded);
    m_unfolded->show();
    // Tab goes from the line to its fields and on to the next line.
    setTabOrder(m_heads[index], form);
    setTabOrder(form, away);
    if (index + 1 < m_heads.size()) setTabOrder(away, m_heads[index + 1]);
    refresh();
    form->focusFirst();
}

void FoldedList::remove(std::size_t index) {
    fold();
    m_sort.remove(index);
    refresh();
    // The keyboard stays in the list.
    if (!m_heads.empty()) m_heads[std::min(index, m_heads.size() - 1)]->setFocus(Qt::OtherFocusReason);
}

}  // namespace kerfwall
