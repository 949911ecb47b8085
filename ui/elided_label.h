// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>

namespace kerfwall {

/// A line of plain text that gives way where room is short: what does not fit ends in dots, and is read whole under
/// the pointer and aloud.
class ElidedLabel : public QLabel {
    Q_OBJECT

public:
    /// `leastWidth`: pixels it keeps in any case.
    explicit ElidedLabel(int leastWidth, QWidget* parent = nullptr);

    void showWhole(const QString& text);
    QString whole() const { return m_whole; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void elide();

    QString m_whole;
    int m_leastWidth;
};

}  // namespace kerfwall
