// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <QStringList>
#include <functional>
#include <vector>

class QHBoxLayout;
class QLabel;
class QPushButton;

namespace kerfwall {

/// A sentence laid on the sheet, under its header, with what can be answered. It never blocks the work.
class NoticeBar : public QFrame {
    Q_OBJECT

public:
    struct Answer {
        QString text;
        std::function<void()> does;  ///< may be empty: it only closes
    };

    explicit NoticeBar(QWidget* parent = nullptr);

    /// Tells one sentence; it stays until it is closed or another takes its place.
    void tell(const QString& sentence);
    /// Asks with answers; the last one is what Esc gives.
    void ask(const QString& sentence, std::vector<Answer> answers);
    void close();
    QString sentence() const;

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QLabel* m_sentence;
    QHBoxLayout* m_row;
    std::vector<QPushButton*> m_buttons;
};

}  // namespace kerfwall
