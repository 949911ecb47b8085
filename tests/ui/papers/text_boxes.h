// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <QString>
#include <QTranslator>
#include <vector>

namespace kerfwall {

/// A line of text, or a part of it in one font and size, as a PDF page has it, mm from the page's top-left corner.
struct TextBox {
    int page = 0;  ///< from 1
    QRectF box;    ///< from the letters' baseline up to their size
    QString text;
};

/// All lines of text, by an independent reader.
[[nodiscard]] std::vector<TextBox> textBoxesOf(const QString& pdf);

/// Two of them that lie over one another; empty where none do.
[[nodiscard]] QString overlapIn(const std::vector<TextBox>& boxes);

/// Without its spaces, for words that were broken.
[[nodiscard]] QString closedUp(QString text);

/// A text four tenths longer, as German and Swedish make it: the longest word of it.
[[nodiscard]] QString fourTenthsLonger(const QString& text);

/// While it stands, every translated text is four tenths longer.
class LongWords : public QTranslator {
public:
    LongWords();
    ~LongWords() override;
    [[nodiscard]] bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char* comment, int n) const override;
};

}  // namespace kerfwall
