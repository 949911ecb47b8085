// SPDX-License-Identifier: GPL-3.0-or-later
// The print form by real mouse and key events. The sheet of the hand is 400 x 250.
#include "ui/print_form.h"

#include <QCheckBox>
#include <QDir>
#include <QFile>
#include <QPushButton>
#include <QTimer>
#include <algorithm>
#include <cmath>

#include "core/drawing/print_scale.h"
#include "core/says/project_text.h"
#include "tests/core/geometry/projects.h"
#include "tests/ui/papers/read_paper.h"
#include "tests/ui/window/hand_on_sheet.h"
#include "ui/job_card.h"
#include "ui/look.h"
#include "ui/paper_pattern.h"
#include "ui/printers.h"
#include "ui/sheet_progress.h"

namespace kerfwall {
namespace {

class PrintOnSheet : public HandOnSheet {
protected:
    void SetUp() override {
        HandOnSheet::SetUp();
        QSettings().remove(QStringLiteral("printScale"));
        QSettings().remove(QStringLiteral("printer"));
        layWindow();
        form()->askForPrinters([] { return QStringList{QStringLiteral("Office"), QStringLiteral("Shop")}; });
        key(Qt::Key_P, Qt::ControlModifier);
        ASSERT_TRUE(form()->isVisible());
    }
    PrintForm* form() { return m_window.findChild<PrintForm*>(); }
    QString words(const char* name) { return m_window.findChild<QLabel*>(QString::fromLatin1(name))->text(); }
    QString trouble(const char* name) {
        const auto* label = m_window.findChild<QLabel*>(QString::fromLatin1(name));
        return label->isVisible() ? label->text() : QString();
    }
    void choosePrinterBefore(int ups) {
        auto* box = m_window.findChild<QComboBox*>(QStringLiteral("printPrinter"));
        box->setFocus();
        for (int i = 0; i < ups; ++i) QTest::keyClick(box, Qt::Key_Up);
    }
    void press(const char* name) {
        auto* button = m_window.findChild<QPushButton*>(QString::fromLatin1(name));
        ASSERT_TRUE(button && button->isVisible()) << name;
        QTest::qWait(20);  // until the column is laid out
        m_window.findChild<JobCard*>()->ensureWidgetVisible(button);
        QTest::mouseClick(button, Qt::LeftButton);
    }
    /// True where something else than the desk is seen about that place beside the panel.
    bool isDrawn(Point place) {
        const QImage picture = m_window.plan().grab().toImage();
        const QColor desk = colours().desk;
        for (int x = -3; x <= 3; ++x) {
            for (int y = -8; y <= 8; ++y) {
                if (!picture.rect().contains(pixel(place) + QPoint(x, y))) continue;
                const QColor at = picture.pixelColor(pixel(place) + QPoint(x, y));
                if (std::abs(at.red() - desk.red()) + std::abs(at.green() - desk.green()) + std::abs(at.blue() - desk.blue()) > 60) return true;
            }
        }
        return false;
    }
};

// Expected from: pencil. A4 with margins and overlap of 10 shows 190 x 277: upright 400 x 250 takes (400 - 10) / 180 = 3 by 1,
// on its side (400 - 10) / 267 = 2 by (250 - 10) / 180 = 2.
TEST_F(PrintOnSheet, SaysHowManySheetsAndTakesFewest) {
    EXPECT_TRUE(words("printSheets").startsWith(QStringLiteral("3 sheets of A4, upright: 3 across and 1 up"))) << words("printSheets").toStdString();
    choose("printLie", 2);
    EXPECT_TRUE(words("printSheets").startsWith(QStringLiteral("4 sheets of A4, on its side: 2 across and 2 up"))) << words("printSheets").toStdString();
}

TEST_F(PrintOnSheet, PaperMarginAndOverlapAreStepsOfTheProject) {
    choose("printPaper", 1);
    EXPECT_EQ(project().printing.paper, "a3");
    type("printMargin", "12.5");
    EXPECT_EQ(project().printing.margin, 12.5);
    type("printOverlap", "15");
    EXPECT_EQ(project().printing.overlap, 15);
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Set the overlap"));
    m_window.session().undo();
    EXPECT_EQ(project().printing.overlap, 10);
}

// Expected from: the trade: no printer is asked to print within a quarter inch, 6.35, of the edge.
TEST_F(PrintOnSheet, AMarginUnderAQuarterInchIsRefused) {
    type("printMargin", "6.3");
    EXPECT_EQ(project().printing.margin, 10);
    EXPECT_TRUE(trouble("printMarginTrouble").contains(QStringLiteral("at least 6.35 mm"))) << trouble("printMarginTrouble").toStdString();
    type("printMargin", "6.35");
    EXPECT_EQ(project().printing.margin, 6.35);
}

// Expected from: pencil: three upright A4 that show 190 and share 10 end at 550, beside the panel of 400.
TEST_F(PrintOnSheet, TheSheetsLieOnThePlanWhileTheFormIsOpen) {
    m_window.chooseTool(MainWindow::PickAt);
    m_window.selection().clear();
    choose("printLie", 1);
    for (const Look look : {Look::Light, Look::Dark}) {
        m_window.setLook(look);
        const Point border{550, 60};
        EXPECT_TRUE(isDrawn(border));
        press("printDone");
        EXPECT_FALSE(form()->isVisible());
        EXPECT_FALSE(isDrawn(border));
        key(Qt::Key_P, Qt::ControlModifier);
    }
}

// Expected from: nominal / measured, of the trade: 100 / 99.2 = 1.008065, 100 / 100.4 = 0.996016.
TEST_F(PrintOnSheet, TheCorrectionComesBackFromTheBars) {
    choosePrinterBefore(1);
    ASSERT_EQ(form()->printer(), QStringLiteral("Shop"));
    type("levelNominal", "100");
    type("levelMeasured", "99.2");
    type("uprightNominal", "100");
    type("uprightMeasured", "100.4");
    EXPECT_NEAR(project().printing.scaleX, 1.008065, 5e-7);
    EXPECT_NEAR(project().printing.scaleY, 0.996016, 5e-7);
    EXPECT_TRUE(words("scaleNow").contains(QStringLiteral("1.0081 times as wide and 0.9960 times as high")));
    auto* measured = m_window.findChild<QLineEdit*>(QStringLiteral("levelMeasured"));
    EXPECT_EQ(measured->text(), QStringLiteral("99.2 mm"));
    QTest::keyClick(measured, Qt::Key_Return);
    type("levelMeasured", "99.2");
    EXPECT_NEAR(project().printing.scaleX, 1.008065, 5e-7) << "entered twice it is not corrected twice";
    type("levelMeasured", "99.5");
    EXPECT_NEAR(project().printing.scaleX, 100 / 99.5, 5e-7) << "a reading that is mended takes the other's place";
    m_window.session().undo();
    m_window.session().undo();
    m_window.session().undo();
    EXPECT_EQ(project().printing.scaleX, 1);
}

double longestStroke(const QString& pdf, bool isLevel, double nearly) {
    double found = 0;
    for (const PageStroke& stroke : strokesOf(pdf)) {
        const double across = std::abs(stroke.from.x - stroke.to.x);
        const double up = std::abs(stroke.from.y - stroke.to.y);
        const double length = isLevel ? across : up;
        if ((isLevel ? up : across) < 1e-6 && std::abs(length - nearly) < 0.02) found = length;
    }
    return found;
}

// A law: nothing is corrected unasked. What was measured off a printer is offered to another template and not put into it, however
// its paper is changed; and how the last one's paper lay is not this one's.
TEST_F(PrintOnSheet, AnotherTemplateIsLeftAsItIs) {
    choosePrinterBefore(1);
    type("levelNominal", "100");
    type("levelMeasured", "99.2");
    choose("printLie", 1);
    m_window.session().start(test::windowProject());
    EXPECT_EQ(form()->wish(), PrintWish{});
    key(Qt::Key_P, Qt::ControlModifier);
    EXPECT_TRUE(m_window.findChild<QPushButton*>(QStringLiteral("scaleUseKept"))->isVisible());
    choose("printPaper", 1);
    choose("printLie", 2);
    choose("printPaper", 5);
    EXPECT_EQ(project().printing.scaleX, 1);
    EXPECT_EQ(project().printing.scaleY, 1);
    EXPECT_TRUE(m_window.findChild<QLineEdit*>(QStringLiteral("levelMeasured"))->text().isEmpty());
}

// Expected from: pencil. A printer that makes 99.2 of 100 across and 100.4 up; the bars of the reprint, times that, are as long as
// they are told to be.
TEST_F(PrintOnSheet, AReprintMeasuresRight) {
    const PrintScale printer{0.992, 1.004};
    const ScaleBars told = scaleBarsOf(printSheets(project(), m_window.session().solved(), form()->wish()), project().printing, Units::Millimetres);
    const PrintScale bars{told.level, told.upright};
    ASSERT_GE(bars.x, 100);
    ASSERT_GE(bars.y, 100);
    ASSERT_TRUE(m_window.writePatternTo(file("before.pdf")));
    EXPECT_NEAR(longestStroke(file("before.pdf"), true, bars.x), bars.x, 0.005) << "the form tells what is printed";
    EXPECT_NEAR(longestStroke(file("before.pdf"), false, bars.y), bars.y, 0.005);
    type("levelMeasured", QByteArray::number(bars.x * printer.x, 'f', 4).constData());
    type("uprightMeasured", QByteArray::number(bars.y * printer.y, 'f', 4).constData());
    ASSERT_TRUE(m_window.writePatternTo(file("after.pdf")));
    EXPECT_NEAR(longestStroke(file("after.pdf"), true, bars.x / printer.x) * printer.x, bars.x, 0.005);
    EXPECT_NEAR(longestStroke(file("after.pdf"), false, bars.y / printer.y) * printer.y, bars.y, 0.005);
}

// Expected from: pencil: on the back the grid begins at the panel's other bottom corner, so the three sheets end 150 left of it.
TEST_F(PrintOnSheet, TheBacksSheetsBeginAtThePanelsOtherCorner) {
    m_window.chooseTool(MainWindow::PickAt);
    m_window.selection().clear();
    choose("printLie", 1);
    choose("printFace", 1);
    EXPECT_TRUE(isDrawn({-150, 60}));
    EXPECT_FALSE(isDrawn({550, 60}));
}

// Expected from: the trade: outside 90 to 110 % it is no printer; 93.75 % is 90 / 96.
TEST_F(PrintOnSheet, AReadingThatNoPrinterMakesIsRefusedWithWhatItIs) {
    type("levelNominal", "100");
    type("levelMeasured", "89");
    EXPECT_EQ(project().printing.scaleX, 1);
    EXPECT_TRUE(trouble("scaleTrouble").contains(QStringLiteral("93.75 %"))) << trouble("scaleTrouble").toStdString();
    type("levelMeasured", "100.4");
    EXPECT_EQ(trouble("scaleTrouble"), QString());
    type("uprightMeasured", "wide");
    EXPECT_FALSE(trouble("scaleTrouble").isEmpty());
    EXPECT_EQ(project().printing.scaleY, 1);
}

// Expected from: the promise: what is measured is kept by printer, along its paper's sides: on its side the axes change places.
TEST_F(PrintOnSheet, IsKeptPerPrinterAndGoesWithThePaper) {
    choosePrinterBefore(1);
    type("levelNominal", "100");
    type("levelMeasured", "99.2");
    choosePrinterBefore(1);
    ASSERT_EQ(form()->printer(), QStringLiteral("Office"));
    type("levelNominal", "100");
    type("levelMeasured", "101");
    auto* box = m_window.findChild<QComboBox*>(QStringLiteral("printPrinter"));
    box->setFocus();
    QTest::keyClick(box, Qt::Key_Down);
    ASSERT_EQ(form()->printer(), QStringLiteral("Shop"));
    EXPECT_NEAR(project().printing.scaleX, 1.008065, 5e-7);
    EXPECT_EQ(project().printing.scaleY, 1);
    choose("printLie", 2);
    EXPECT_EQ(project().printing.scaleX, 1);
    EXPECT_NEAR(project().printing.scaleY, 1.008065, 5e-7);
    press("scaleNone");
    EXPECT_EQ(project().printing.scaleY, 1);
    EXPECT_EQ(keptScale(QStringLiteral("Shop")), std::optional(PrintScale{}));
}

TEST_F(PrintOnSheet, FaceLinesContentsAndARollAreStepsOfTheProject) {
    choose("printFace", 1);
    EXPECT_EQ(project().printing.face, Face::Back);
    choose("printHairline", 1);
    EXPECT_TRUE(project().printing.hairline);
    auto* waste = m_window.findChild<QCheckBox*>(QStringLiteral("leaveOut-waste"));
    QTest::keyClick(waste, Qt::Key_Space);
    EXPECT_EQ(project().printing.leaveOut, std::vector{PatternLayer::Waste});
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Choose what is printed"));
    m_window.session().undo();
    EXPECT_TRUE(waste->isChecked());
    choose("printPaper", 11);
    EXPECT_EQ(project().printing.paper, "roll-610");
    EXPECT_TRUE(words("printSheets").startsWith(QStringLiteral("One piece of the roll, "))) << words("printSheets").toStdString();
    type("printRoll", "420.5");
    EXPECT_EQ(project().printing.paper, "roll-420.5");
    EXPECT_TRUE(readProject(writeProject(project())).has_value());
}

TEST_F(PrintOnSheet, AProjectFromElsewhereTakesWhatWasMeasuredHere) {
    choosePrinterBefore(1);
    type("levelNominal", "100");
    type("levelMeasured", "99.2");
    Project other = project();
    other.printing.scaleX = 0.99;
    m_window.session().change(QStringLiteral("Elsewhere"), other);
    press("scaleUseKept");
    EXPECT_NEAR(project().printing.scaleX, 1.008065, 5e-7);
    EXPECT_FALSE(m_window.findChild<QPushButton*>(QStringLiteral("scaleUseKept"))->isVisible());
}

// A law: what takes longer than a glance tells how far it is, and its button stops it with nothing written.
TEST_F(PrintOnSheet, ALargePatternTellsItsSheetsAndCanBeStopped) {
    Project large = test::panelOf(3000, 3000);
    for (int i = 0; i < 18; ++i) large.lines.push_back(test::offsetLine("L" + std::to_string(i), i % 2 == 0 ? Edge::Bottom : Edge::Left, 100 + 150 * i));
    large.cutouts = {test::cutoutAt("window", {{1500, 1500}})};
    large.printing.overlap = 150;
    m_window.session().change(QStringLiteral("A large panel"), large);
    QString told;
    QTimer presses;
    QObject::connect(&presses, &QTimer::timeout, [&] {
        auto* progress = m_window.findChild<SheetProgress*>();
        if (!progress || !progress->isVisible()) return;
        told = progress->labelText();
        QTest::mouseClick(progress->findChild<QPushButton*>(), Qt::LeftButton);
    });
    presses.start(1);
    EXPECT_FALSE(m_window.writePatternTo(file("large.pdf")));
    EXPECT_TRUE(told.endsWith(QStringLiteral(" of %1").arg(printSheets(large, m_window.session().solved(), form()->wish()).sheets.size()))) << told.toStdString();
    EXPECT_TRUE(m_window.notice().sentence().contains(QStringLiteral("nothing was written"))) << m_window.notice().sentence().toStdString();
    EXPECT_FALSE(QFile::exists(file("large.pdf")));
}

TEST_F(PrintOnSheet, WithNoPrinterASentenceIsToldAndThePdfRemains) {
    press("printDone");
    form()->askForPrinters([] { return QStringList(); });
    key(Qt::Key_P, Qt::ControlModifier);
    press("printNow");
    EXPECT_TRUE(m_window.notice().sentence().contains(QStringLiteral("No printer"))) << m_window.notice().sentence().toStdString();
    EXPECT_TRUE(m_window.writePatternTo(file("pattern.pdf")));
    EXPECT_TRUE(QFile(file("pattern.pdf")).size() > 1000);
}

TEST_F(PrintOnSheet, APrinterThatDoesNotAnswerIsTold) {
    choosePrinterBefore(1);
    press("printNow");
    EXPECT_TRUE(m_window.notice().sentence().contains(QStringLiteral("Shop"))) << m_window.notice().sentence().toStdString();
}

TEST_F(PrintOnSheet, AFileThatCannotBeWrittenIsToldAndStaysAsItWas) {
    EXPECT_FALSE(m_window.writePatternTo(file("no/such/folder/pattern.pdf")));
    EXPECT_TRUE(m_window.notice().sentence().contains(QStringLiteral("could not be written"))) << m_window.notice().sentence().toStdString();
    EXPECT_FALSE(QDir(file("no")).exists());
}

// Expected from: the promise: everything can be done by keys: Tab goes through the form, Esc in a field leaves it.
TEST_F(PrintOnSheet, TabReachesEveryFieldAndEscLeaves) {
    QStringList reached;
    for (int i = 0; i < 80; ++i) {
        if (const QWidget* focus = m_window.focusWidget()) reached << focus->objectName();
        QTest::keyClick(m_window.focusWidget(), Qt::Key_Tab);
    }
    for (const char* name : {"printPrinter", "printPaper", "printLie", "printMargin", "printOverlap", "printFace", "printHairline", "leaveOut-waste", "printNow", "printPdf", "levelNominal",
                             "levelMeasured", "uprightNominal", "uprightMeasured"}) {
        EXPECT_TRUE(reached.contains(QString::fromLatin1(name))) << name << " of " << reached.join(QLatin1Char(' ')).toStdString();
    }
    QTest::keyClick(m_window.findChild<QLineEdit*>(QStringLiteral("levelMeasured")), Qt::Key_Escape);
    EXPECT_FALSE(form()->isVisible());
}

}  // namespace
}  // namespace kerfwall
