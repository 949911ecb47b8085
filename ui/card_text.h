// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QTextLayout>
#include <QWidget>
#include <map>

namespace kerfwall {

/// Words on the job card that wrap to its width. They are laid out once for each text and width, and the card is laid out
/// anew only where their height changes: a label asks for both with every word, which a drag cannot wait for.
class CardText : public QWidget {
    Q_OBJECT

public:
    explicit CardText(QWidget* parent = nullptr);

    void setText(const QString& text);
    QString text() const { return m_text; }
    void setInk(const QColor& ink);
    void setBold(bool bold);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    static double layOut(QTextLayout& layout, int width);
    void forgetHeights();

    QString m_text;
    QColor m_ink;
    mutable std::map<int, int> m_heights;  // by width, of this text in this font
    QTextLayout m_laid;                    // as it is painted
    int m_laidWidth = -1;
};

}  // namespace kerfwall
