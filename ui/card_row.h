// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <QString>

namespace kerfwall {

class CardText;

/// One row of the job card: a mark, a heading, a sentence under it. It can be clicked and reached by keyboard.
class CardRow : public QFrame {
    Q_OBJECT

public:
    enum class Kind { Stop, Care, Note, Step, Size };

    struct Text {
        Kind kind = Kind::Step;
        QString mark;     ///< the row's number; of a size its value
        QString heading;
        QString text;
        QString whole;    ///< shown in place of `text` once the row is chosen; "": there is no more
        bool operator==(const Text&) const = default;
    };

    explicit CardRow(QWidget* parent = nullptr);

    void show(const Text& text);
    void setChosen(bool chosen);
    bool isChosen() const { return m_chosen; }
    /// Takes on the colours worn now.
    void dress();

Q_SIGNALS:
    void clicked();

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void showWords();
    void paintSign(QPainter& painter, const QRectF& room) const;

    Text m_text;
    bool m_chosen = false;
    CardText* m_heading;
    CardText* m_sentence;
};

}  // namespace kerfwall
