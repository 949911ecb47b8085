// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>

#include "ui/answers.h"

namespace kerfwall {

/// Works out answers off the window's thread. The newest question wins: one that was asked while another was in work
/// takes the place of any that still waits.
class Answerer : public QObject {
    Q_OBJECT

public:
    explicit Answerer(QObject* parent = nullptr);
    ~Answerer() override;

    /// What is asked; free of the window's thread.
    using Question = std::function<AnswersPtr()>;

    /// Asks; `answered` follows from the event loop unless a newer question or `forget` comes first.
    void ask(Question question);
    /// Waits for the newest question's answer and takes it; none where nothing was asked since the last answer.
    [[nodiscard]] AnswersPtr wait();
    /// What was asked is answered no more.
    void forget();

Q_SIGNALS:
    void answered(const kerfwall::AnswersPtr& answers);

private:
    struct Asked {
        Question question;
        int number = 0;
    };

    void work(const std::stop_token& stop);
    void give(int number);

    // The window's thread alone:
    int m_number = 0;     // of the newest question
    int m_forgotten = 0;  // questions up to this one are answered no more
    bool m_isAsked = false;

    std::mutex m_guard;  // for all below
    std::condition_variable_any m_news;
    std::optional<Asked> m_question;
    AnswersPtr m_answers;
    int m_answeredNumber = 0;

    std::jthread m_thread;  // last: joined before what it uses is gone
};

}  // namespace kerfwall
