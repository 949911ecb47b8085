// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QComboBox>
#include <QMenu>
#include <QMenuBar>
#include <QPainter>
#include <QStyleOptionComboBox>

#include "tests/ui/window/hand_on_sheet.h"
#include "ui/card_row.h"
#include "ui/card_text.h"

namespace kerfwall {

inline bool isCutOff(const QWidget& widget) {
    const QSize needed = widget.hasHeightForWidth() ? QSize(0, widget.heightForWidth(widget.width())) : widget.minimumSizeHint();
    return widget.width() < needed.width() || widget.height() < needed.height();
}

inline bool isChoiceCutOff(const QComboBox& box) {
    QStyleOptionComboBox option;
    option.initFrom(&box);
    option.editable = box.isEditable();
    const QRect room = box.style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, &box);
    return box.fontMetrics().horizontalAdvance(box.currentText()) > room.width();
}

/// The first words on the sheet that have not the room they need; "" for none.
inline QString cutOffWords(const QWidget& window) {
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        const auto* label = qobject_cast<const QLabel*>(widget);
        const auto* button = qobject_cast<const QAbstractButton*>(widget);
        const auto* text = qobject_cast<const CardText*>(widget);
        if ((label || button || text) && widget->isVisible() && isCutOff(*widget)) {
            return label ? label->text() : button ? button->text() : text->text();
        }
        const auto* box = qobject_cast<const QComboBox*>(widget);
        if (box && box->isVisible() && isChoiceCutOff(*box)) return box->currentText();
    }
    return {};
}

inline void takePicture(MainWindow& window, const std::string& name) {
    const QString folder = qEnvironmentVariable("KERFWALL_PICTURES");
    if (folder.isEmpty()) return;
    QPixmap picture = window.grab();
    QPainter painter(&picture);
    for (QMenu* menu : window.findChildren<QMenu*>()) {
        if (menu->isVisible()) painter.drawPixmap(window.mapFromGlobal(menu->pos()), menu->grab());
    }
    painter.end();
    ASSERT_TRUE(picture.save(QStringLiteral("%1/%2.png").arg(folder, QString::fromStdString(name))));
}

/// A window of the smallest size in which states of the sheet are reached by hand and looked at. With
/// KERFWALL_PICTURES=<folder> each leaves its picture there (tests/pictures.sh), at the size
/// KERFWALL_PICTURE_SIZE=<width>x<height>.
class PicturedStates : public HandOnSheet {
protected:
    void SetUp() override {
        HandOnSheet::SetUp();
        const QStringList size = qEnvironmentVariable("KERFWALL_PICTURE_SIZE", QStringLiteral("1024x680")).split(QLatin1Char('x'));
        m_window.resize(size.value(0).toInt(), size.value(1).toInt());
    }
    void TearDown() override { wear(*qApp, Look::Light); }

    void openSample(const char* name) {
        m_window.openFile(QStringLiteral(KERFWALL_SAMPLES "/") + QString::fromLatin1(name));
    }
    CardRow* rowWith(const char* word) {
        for (CardRow* row : m_window.findChildren<CardRow*>()) {
            if (row->isVisible() && row->accessibleName().contains(QString::fromLatin1(word))) return row;
        }
        return nullptr;
    }

    /// In light and dark, and in millimetres and inches where units can be changed now: no text may be cut off.
    void expectWholeTexts(const std::string& state) {
        for (const Look look : {Look::Light, Look::Dark}) {
            m_window.setLook(look);
            for (const bool inches : {false, true}) {
                Session& session = m_window.session();
                const bool isOther = (session.project().units == Units::Inches) != inches;
                // Other units would end what is in hand, and put an open size away.
                if (isOther && (session.isInHand() || m_window.findChild<QWidget*>(QStringLiteral("sizeField"))->isVisible())) continue;
                if (isOther) m_window.findChild<QAbstractButton*>(QStringLiteral("units"))->click();
                QTest::qWait(30);
                const std::string name = state + (look == Look::Dark ? "_dark" : "_light") + (inches ? "_inch" : "_mm");
                EXPECT_TRUE(QTest::qWaitFor([this] { return cutOffWords(m_window).isEmpty(); }))
                    << name << ": \"" << cutOffWords(m_window).toStdString() << '"';
                takePicture(m_window, name);
            }
        }
    }
};

}  // namespace kerfwall
