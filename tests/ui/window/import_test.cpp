// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDropEvent>
#include <QFile>
#include <QMimeData>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <QUrl>

#include "core/geometry/work_rectangle.h"
#include "tests/ui/window/things_on_sheet.h"
#include "ui/notice_bar.h"

namespace kerfwall {
namespace {

class SvgOnSheet : public ThingsOnSheet {
protected:
    QString write(const QByteArray& body) {
        QFile file(m_dir.filePath(QStringLiteral("part.svg")));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"400mm\" height=\"250mm\" viewBox=\"0 0 400 250\">" + body + "</svg>");
        return file.fileName();
    }
    void drop(const QString& path) {
        QMimeData data;
        data.setUrls({QUrl::fromLocalFile(path)});
        QDragEnterEvent enters(QPoint(50, 50), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&m_window, &enters);
        EXPECT_TRUE(enters.isAccepted());
        QDropEvent event(QPointF(50, 50), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&m_window, &event);
    }
    void answer(const QString& text) {
        for (QPushButton* button : m_window.notice().findChildren<QPushButton*>()) {
            if (button->text() == text) return button->click();
        }
        ADD_FAILURE() << text.toStdString();
    }

    QTemporaryDir m_dir;
};

// Expected from: pencil. 30 from the picture's left, 200 to 240 from the top of 250: 10 to 50 above the panel's bottom edge.
TEST_F(SvgOnSheet, DroppedBecomesTheWorkpieceAndIsTakenBack) {
    drop(write("<rect x=\"30\" y=\"200\" width=\"100\" height=\"40\"/>"));
    EXPECT_TRUE(m_window.notice().sentence().contains(QStringLiteral("part.svg holds an outline of 100.0 mm by 40.0 mm with 4 corners")))
        << m_window.notice().sentence().toStdString();
    answer(QStringLiteral("It is the workpiece"));
    EXPECT_EQ(workBounds(project()), (Box{{30, 10}, {130, 50}}));
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(project().workpiece);
}

TEST_F(SvgOnSheet, OrTheCornersOfWhatIsWantedOnItsForm) {
    m_window.importOutline(write("<polygon points=\"30,200 130,200 130.5,240.25\"/>"));
    answer(QStringLiteral("It is wanted in the work"));
    auto* corners = m_window.findChild<QPlainTextEdit*>(QStringLiteral("wantedCorners"));
    ASSERT_TRUE(corners && corners->isVisible());
    EXPECT_EQ(corners->toPlainText(), QStringLiteral("30.000, 50.000\n130.000, 50.000\n130.500, 9.750"));
}

TEST_F(SvgOnSheet, WhatCannotBeReadIsToldAndChangesNothing) {
    const Project before = project();
    m_window.importOutline(write("<path d=\"M0 0h40v40\"/>"));
    EXPECT_TRUE(m_window.notice().sentence().contains(QStringLiteral("part.svg: Line 1 of the file: The path is open")));
    m_window.importOutline(write("<path d=\"M0 0L40 40H0L40 0Z\"/>"));
    answer(QStringLiteral("It is the workpiece"));
    EXPECT_TRUE(m_window.notice().sentence().contains(QStringLiteral("crosses or touches itself")));
    EXPECT_EQ(project(), before);
}

}  // namespace
}  // namespace kerfwall
