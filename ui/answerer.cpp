// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/answerer.h"

#include <utility>

namespace kerfwall {

Answerer::Answerer(QObject* parent) : QObject(parent), m_thread([this](const std::stop_token& stop) { work(stop); }) {}

Answerer::~Answerer() = default;

void Answerer::ask(Question question) {
    m_isAsked = true;
    {
        const std::lock_guard lock(m_guard);
        m_question = Asked{std::move(question), ++m_number};
    }
    m_news.notify_all();
}

void Answerer::work(const std::stop_token& stop) {
    std::unique_lock lock(m_guard);
    while (m_news.wait(lock, stop, [this] { return m_question.has_value(); })) {
        const Asked asked = std::move(*m_question);
        m_question.reset();
        lock.unlock();
        AnswersPtr answers = asked.question();
        lock.lock();
        m_answers = std::move(answers);
        m_answeredNumber = asked.number;
        m_news.notify_all();
        QMetaObject::invokeMethod(this, [this, number = asked.number] { give(number); }, Qt::QueuedConnection);
    }
}

void Answerer::give(int number) {
    AnswersPtr answers;
    {
        const std::lock_guard lock(m_guard);
        // An older answer shows the way the hand went; the newest ends the question.
        if (!m_isAsked || number <= m_forgotten || number != m_answeredNumber) return;
        answers = m_answers;
    }
    if (number == m_number) m_isAsked = false;
    Q_EMIT answered(answers);
}

AnswersPtr Answerer::wait() {
    if (!m_isAsked) return nullptr;
    m_isAsked = false;
    m_forgotten = m_number;
    std::unique_lock lock(m_guard);
    m_news.wait(lock, [this] { return m_answeredNumber == m_number; });
    return m_answers;
}

void Answerer::forget() {
    m_isAsked = false;
    m_forgotten = m_number;
    const std::lock_guard lock(m_guard);
    m_question.reset();
}

}  // namespace kerfwall
