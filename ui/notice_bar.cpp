// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/notice_bar.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <algorithm>

namespace kerfwall {

NoticeBar::NoticeBar(QWidget* parent) : QFrame(parent), m_sentence(new QLabel(this)), m_row(new QHBoxLayout(this)) {
    setObjectName(QStringLiteral("notice"));
    m_sentence->setObjectName(QStringLiteral("noticeSentence"));
    m_sentence->setWordWrap(true);
    m_sentence->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_row->setContentsMargins(16, 8, 12, 8);
    m_row->addWidget(m_sentence, 1);
    hide();
}

void NoticeBar::tell(const QString& sentence) { ask(sentence, {{tr("Close"), {}}}); }

void NoticeBar::ask(const QString& sentence, std::vector<Answer> answers) {
    for (QPushButton* button : m_buttons) button->deleteLater();
    m_buttons.clear();
    m_sentence->setText(sentence);
    setAccessibleName(sentence);
    for (const Answer& answer : answers) {
        auto* button = new QPushButton(answer.text, this);
        m_row->addWidget(button);
        m_buttons.push_back(button);
        connect(button, &QPushButton::clicked, this, [this, does = answer.does] {
            close();
            if (does) does();
        });
    }
    show();
    // A question takes the keyboard; a sentence leaves it where the work is.
    if (m_buttons.size() > 1) m_buttons.front()->setFocus(Qt::OtherFocusReason);
}

void NoticeBar::close() {
    hide();
    m_sentence->clear();
}

QString NoticeBar::sentence() const { return isHidden() ? QString() : m_sentence->text(); }

void NoticeBar::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && !m_buttons.empty()) return m_buttons.back()->click();
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    const auto focused = std::ranges::find_if(m_buttons, &QPushButton::hasFocus);
    if (enter && focused != m_buttons.end()) return (*focused)->click();
    QFrame::keyPressEvent(event);
}

}  // namespace kerfwall
