// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAbstractItemView>
#include <QComboBox>
#include <QDir>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QWheelEvent>
#include <functional>

#include "core/says/project_text.h"
#include "tests/ui/window/hand_on_sheet.h"
#include "ui/bench_form.h"
#include "ui/job_card.h"
#include "ui/length_field.h"
#include "ui/my_bench.h"

namespace kerfwall {
namespace {

class FormsOnSheet : public HandOnSheet {
protected:
    template <class Widget>
    Widget* found(const char* name) {
        // A form that was taken away may still stand beside the one shown; several forms have rows of one name.
        for (Widget* each : m_window.findChildren<Widget*>(QString::fromLatin1(name))) {
            if (each->isVisible()) return each;
        }
        ADD_FAILURE() << "no " << name << " to be seen";
        return nullptr;
    }
    void bring(QWidget* widget) {
        QTest::qWait(5);  // until the column is laid out
        m_window.findChild<JobCard*>()->ensureWidgetVisible(widget);
    }
    void pressButton(const char* name) {
        auto* button = found<QPushButton>(name);
        ASSERT_TRUE(button);
        bring(button);
        QTest::mouseClick(button, Qt::LeftButton);
        QTest::qWait(5);
    }
    void typeIn(const char* name, const char* text) {
        auto* field = found<QLineEdit>(name);
        ASSERT_TRUE(field);
        bring(field);
        QTest::mouseClick(field, Qt::LeftButton);
        field->selectAll();
        QTest::keyClick(field, Qt::Key_Delete);
        QTest::keyClicks(field, QString::fromUtf8(text));
        QTest::keyClick(field, Qt::Key_Return);
    }
    /// In the list that drops down, by its keys: one choice.
    void choose(const char* name, int option) {
        auto* box = found<QComboBox>(name);
        ASSERT_TRUE(box);
        bring(box);
        QTest::mouseClick(box, Qt::LeftButton, {}, {box->width() - 8, box->height() / 2});
        if (!box->view()->isVisible()) box->showPopup();
        QTest::keyClick(box->view(), Qt::Key_Home);
        for (int i = 0; i < option; ++i) QTest::keyClick(box->view(), Qt::Key_Down);
        QTest::keyClick(box->view(), Qt::Key_Return);
    }
    QString trouble(const char* name) {
        auto* label = found<QLabel>(name);
        return label ? label->text() : QString();
    }
    const Bench& bench() { return benchOf(project()); }
    /// One entry: it changes what it should, is one step, and undo brings everything back.
    void entry(const std::function<void()>& enters, const std::function<bool(const Project&)>& holds, const char* what) {
        SCOPED_TRACE(what);
        const Project before = project();
        ASSERT_FALSE(holds(before)) << "the test would show nothing";
        enters();
        EXPECT_TRUE(holds(project()));
        EXPECT_TRUE(readProject(writeProject(project()))) << "a file of it opens again";
        m_window.session().undo();
        EXPECT_EQ(project(), before) << "one step";
        m_window.session().redo();
    }
    void lengthEntry(const char* field, double mm, const std::function<std::optional<double>(const Project&)>& read) {
        entry([&] { typeIn(field, std::to_string(mm).c_str()); }, [&](const Project& p) { return read(p) == mm; }, field);
    }
    void choiceEntry(const char* field, int option, const std::function<bool(const Project&)>& holds) {
        entry([&] { choose(field, option); }, holds, field);
    }
};

class BenchOnSheet : public FormsOnSheet {
protected:
    void SetUp() override {
        FormsOnSheet::SetUp();
        key(Qt::Key_F7, Qt::ShiftModifier);
        ASSERT_TRUE(m_window.findChild<BenchForm*>()->isVisible());
    }
    void sawEntry(const char* field, std::size_t saw, double value, double Saw::*size) {
        lengthEntry(field, value, [=](const Project& p) { return std::optional(benchOf(p).saws.at(saw).*size); });
    }
    void unfold(const char* name) { pressButton(name); }
};

TEST_F(BenchOnSheet, EveryFieldOfARipFence) {
    unfold("saw0");
    sawEntry("sawKerf", 0, 2.6, &Saw::kerf);
    sawEntry("sawBlade", 0, 300, &Saw::blade);
    sawEntry("sawRepeatability", 0, 0.3, &Saw::repeatability);
    sawEntry("sawKerfPlusMinus", 0, 0.1, &Saw::kerfPlusMinus);
    sawEntry("sawDepthPlusMinus", 0, 0.2, &Saw::depthPlusMinus);
    sawEntry("sawMaxFence", 0, 700, &Saw::maxFence);
    choiceEntry("sawFenceSide", 0, [](const Project& p) { return benchOf(p).saws[0].fenceSide == Side::Left; });
    entry([&] { typeIn("sawName", "big saw"); }, [](const Project& p) { return benchOf(p).saws[0].id == "big saw"; }, "sawName");
}

TEST_F(BenchOnSheet, EveryFieldOfASled) {
    unfold("saw1");
    sawEntry("sawBase", 1, 15, &Saw::base);
    sawEntry("sawMaxCut", 1, 500, &Saw::maxCut);
    sawEntry("sawMaxStop", 1, 550, &Saw::maxStop);
    sawEntry("sawSquareness", 1, 0.3, &Saw::squareness);
    choiceEntry("sawFenceAt", 1, [](const Project& p) { return benchOf(p).saws[1].fenceFar; });
}

// Expected from: facts, the five-cut test: (25.90 - 25.30) / (4 x 300) = 0.5 over a metre; a strip narrower at its far
// end is as far out.
TEST_F(BenchOnSheet, ASledsSquarenessComesFromAFiveCutTest) {
    unfold("saw1");
    const auto isSquareWithin = [](double mm) {
        return [mm](const Project& p) { return std::abs(benchOf(p).saws[1].squareness - mm) < 1e-12; };
    };
    entry([&] { typeIn("sawFiveCuts", "25.90; 25.30; 300"); }, isSquareWithin(0.5), "wider at its far end");
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Set the sled's squareness"));
    entry([&] { typeIn("sawFiveCuts", "25.30; 25.42; 300"); }, isSquareWithin(0.1), "narrower");
    typeIn("sawFiveCuts", "25.30; 25.42");
    EXPECT_TRUE(trouble("sawFiveCutsTrouble").startsWith(QStringLiteral("Three lengths")));
}

TEST_F(BenchOnSheet, EveryFieldOfAMitreGauge) {
    unfold("saw2");
    sawEntry("sawMaxAngle", 2, 45, &Saw::maxAngle);
    sawEntry("sawSquareness", 2, 0.4, &Saw::squareness);
    choiceEntry("sawStop", 0, [](const Project& p) { return !benchOf(p).saws[2].stop; });
}

TEST_F(BenchOnSheet, EveryFieldOfAGuideRail) {
    unfold("saw3");
    sawEntry("sawRail", 3, 5, &Saw::rail);
    sawEntry("sawRailLength", 3, 1600, &Saw::railLength);
    sawEntry("sawRailWidth", 3, 200, &Saw::railWidth);
    choiceEntry("sawRailSide", 1, [](const Project& p) { return benchOf(p).saws[3].railSide == Side::Right; });
}

TEST_F(BenchOnSheet, ASlidingMitreSawIsAddedWithItsFields) {
    choose("newSawKind", 4);
    entry([&] { pressButton("addSaw"); }, [](const Project& p) { return benchOf(p).saws.size() == 5; }, "addSaw");
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Add a saw"));
    ASSERT_EQ(bench().saws.at(4), stockSaw(SawKind::SlidingMitre));
    QTest::qWait(5);
    if (!m_window.findChild<QLineEdit*>(QStringLiteral("sawMaxCut"))) unfold("saw4");
    sawEntry("sawMaxCut", 4, 310, &Saw::maxCut);
    sawEntry("sawMaxAngle", 4, 50, &Saw::maxAngle);
}

TEST_F(BenchOnSheet, ASawIsTakenAway) {
    unfold("saw2");
    entry([&] { pressButton("sawTakeAway"); },
          [](const Project& p) { return benchOf(p).saws.size() == 3 && !findSaw(benchOf(p), "gauge"); }, "sawTakeAway");
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Take a saw away"));
}

// Expected from: two saws of one name would make a file that is refused.
TEST_F(BenchOnSheet, ABadNameIsToldUnderItsField) {
    const Project before = project();
    unfold("saw3");
    typeIn("sawName", "sled");
    EXPECT_EQ(trouble("sawNameTrouble"), QStringLiteral("There is a saw called sled already; give this one another name."));
    EXPECT_EQ(project(), before);
    typeIn("sawName", "track");
    EXPECT_EQ(bench().saws[3].id, "track");
}

TEST_F(BenchOnSheet, ABadSizeIsToldUnderItsField) {
    const Project before = project();
    unfold("saw0");
    typeIn("sawKerf", "12");
    EXPECT_EQ(trouble("sawKerfTrouble"), QStringLiteral("A kerf's width is 0.5 to 10 mm."));
    typeIn("sawBlade", "wide");
    EXPECT_FALSE(trouble("sawBladeTrouble").isEmpty());
    EXPECT_EQ(project(), before);
}

TEST_F(BenchOnSheet, TheTrimmingBitAndItsFields) {
    lengthEntry("trimDiameter", 16, [](const Project& p) { return std::optional(trimBitOf(p).diameter); });
    lengthEntry("trimBearing", 7, [](const Project& p) { return std::optional(trimBitOf(p).bearingLength); });
    lengthEntry("trimCutting", 30, [](const Project& p) { return std::optional(trimBitOf(p).cuttingLength); });
    choiceEntry("trimBearingAt", 2, [](const Project& p) { return trimBitOf(p).bearingAt == BearingAt::Both; });
    choiceEntry("trimWith", 1, [](const Project& p) { return benchOf(p).trimWith == Router::Hand; });
    entry([&] { typeIn("trimDiameter", ""); }, [](const Project& p) { return !benchOf(p).trimBit; }, "no trimming bit");
}

TEST_F(BenchOnSheet, DrillsBitsAndBushes) {
    lengthEntry("cornerDrill", 6, [](const Project& p) { return benchOf(p).cornerDrill; });
    lengthEntry("circleBit", 6, [](const Project& p) { return benchOf(p).circleBit; });
    lengthEntry("routerBase", 170, [](const Project& p) { return benchOf(p).base; });
    entry([&] { typeIn("cornerDrill", ""); }, [](const Project& p) { return !benchOf(p).cornerDrill; }, "no drill");
    entry([&] { typeIn("bores", "20; 35,5; 60"); },
          [](const Project& p) { return benchOf(p).bores == std::vector<double>{20, 35.5, 60}; }, "bores");
    entry([&] { typeIn("benchBits", "6; 9.5"); }, [](const Project& p) { return benchOf(p).bits == std::vector<double>{6, 9.5}; },
          "bits");
    entry([&] { typeIn("benchBushes", "17; 24"); },
          [](const Project& p) { return benchOf(p).bushes == std::vector<double>{17, 24}; }, "bushes");
    entry([&] { typeIn("bores", ""); }, [](const Project& p) { return benchOf(p).bores.empty(); }, "no bores");
}

TEST_F(BenchOnSheet, ABadEntryOfAListIsToldByItsPlace) {
    const Project before = project();
    typeIn("bores", "20; 900");
    EXPECT_EQ(trouble("boresTrouble"), QStringLiteral("The 2nd size, \"900\": a drill's or bore's diameter is 1 to 300 mm."));
    EXPECT_EQ(project(), before);
}

TEST_F(BenchOnSheet, ClampsAreAddedSetAndTakenAway) {
    entry([&] { pressButton("addClamp"); }, [](const Project& p) { return benchOf(p).clamps.size() == 1; }, "addClamp");
    QTest::qWait(5);
    unfold("clamp0");
    const auto clampEntry = [this](const char* field, double value, double Clamp::*size) {
        lengthEntry(field, value, [=](const Project& p) { return std::optional(benchOf(p).clamps.at(0).*size); });
    };
    clampEntry("clampHole", 10, &Clamp::hole);
    clampEntry("clampInsert", 60, &Clamp::insert);
    clampEntry("clampReach", 120, &Clamp::reach);
    clampEntry("clampJaw", 30, &Clamp::jaw);
    entry([&] { pressButton("clampTakeAway"); }, [](const Project& p) { return benchOf(p).clamps.empty(); }, "clampTakeAway");
}

// Expected from: my bench is what new templates begin with.
TEST_F(BenchOnSheet, ABenchIsKeptForNewTemplates) {
    typeIn("cornerDrill", "7");
    pressButton("benchKeep");
    const Bench kept = bench();
    EXPECT_EQ(myBench(), kept);
    pressButton("benchTakeStock");
    EXPECT_EQ(bench(), stockBench());
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Take the stock bench"));
    pressButton("benchTakeMine");
    EXPECT_EQ(bench(), kept);
    m_window.session().startNew();
    EXPECT_EQ(bench().cornerDrill, 7);
    EXPECT_TRUE(m_window.session().isSaved()) << "an empty sheet asks no questions";
}

TEST_F(BenchOnSheet, InInchesSizesAreTypedInInches) {
    m_window.session().change(QStringLiteral("Inches"), [this] {
        Project next = project();
        next.units = Units::Inches;
        return next;
    }());
    typeIn("bores", "1; 1 1/2");
    EXPECT_EQ(bench().bores, (std::vector<double>{25.4, 38.1}));
    unfold("saw0");
    typeIn("sawKerf", "1/8");
    EXPECT_EQ(bench().saws[0].kerf, 3.175);
    typeIn("sawRepeatability", "0.2");
    EXPECT_EQ(bench().saws[0].repeatability, 0.2) << "tolerances stay in millimetres";
}

// Expected from: a form that is scrolled by the wheel must not be changed by it.
TEST_F(BenchOnSheet, TheWheelChoosesNothing) {
    auto* box = found<QComboBox>("trimWith");
    bring(box);
    const Project before = project();
    const QPointF middle(box->width() / 2.0, box->height() / 2.0);
    QWheelEvent turn(middle, box->mapToGlobal(middle), {}, {0, -120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(box, &turn);
    EXPECT_EQ(project(), before);
}

// Expected from: everything by keyboard: the whole form by Tab, each stop seen, and Esc or Done leaves it.
TEST_F(BenchOnSheet, ByKeyboardAlone) {
    ASSERT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("benchDone"));
    QStringList stops;
    for (int i = 0; i < 40 && !stops.contains(QStringLiteral("addClamp")); ++i) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        stops << QApplication::focusWidget()->objectName();
        EXPECT_FALSE(QApplication::focusWidget()->visibleRegion().isEmpty()) << stops.last().toStdString();
    }
    for (const char* wanted : {"saw0", "saw3", "newSawKind", "addSaw", "trimDiameter", "bores", "benchBushes", "addClamp"}) {
        EXPECT_TRUE(stops.contains(QString::fromLatin1(wanted))) << wanted;
    }
    EXPECT_LT(stops.indexOf(QStringLiteral("saw3")), stops.indexOf(QStringLiteral("newSawKind")));
    EXPECT_LT(stops.indexOf(QStringLiteral("addSaw")), stops.indexOf(QStringLiteral("trimDiameter")));
    auto* saw = found<QPushButton>("saw1");
    saw->setFocus();
    QTest::keyClick(saw, Qt::Key_Space);
    QTest::qWait(5);
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("sawName"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("sawKerf"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_FALSE(m_window.findChild<BenchForm*>()->isVisible());
}

using UseOnSheet = FormsOnSheet;

TEST_F(UseOnSheet, TheWholeUse) {
    key(Qt::Key_F7);
    choiceEntry("useBy", 1, [](const Project& p) { return p.use.byBush; });
    lengthEntry("bush", 24, [](const Project& p) { return p.use.bush; });
    lengthEntry("bushLength", 6, [](const Project& p) { return std::optional(p.use.bushLength); });
    lengthEntry("useBit", 8, [](const Project& p) { return p.use.bit; });
    lengthEntry("useCutting", 32, [](const Project& p) { return p.use.cuttingLength; });
    lengthEntry("useDepth", 20, [](const Project& p) { return p.use.depth; });
    choiceEntry("router", 1, [](const Project& p) { return p.use.router == Router::Table; });
    choiceEntry("againstWork", 2, [](const Project& p) { return p.use.againstWork == Face::Back; });
    choiceEntry("inKerfs", 2, [](const Project& p) { return p.use.inKerfs == true; });
    choiceEntry("inKerfs", 0, [](const Project& p) { return !p.use.inKerfs; });
    entry([&] { typeIn("useCutters", "8; 12.7"); },
          [](const Project& p) { return p.use.cutters.size() == 2 && p.use.cutters[1].diameter == 12.7; }, "useCutters");
    choiceEntry("useBy", 0, [](const Project& p) { return !p.use.byBush; });
    choiceEntry("useBearingAt", 2, [](const Project& p) { return p.use.bearingAt == BearingAt::Shank; });
}

using PanelOnSheet = FormsOnSheet;

TEST_F(PanelOnSheet, HowTheWorkIsOrdered) {
    key(Qt::Key_F6);
    choiceEntry("planPrefers", 1, [](const Project& p) { return p.plan.prefer == Prefer::FewestSetups; });
    choiceEntry("planPrefers", 2, [](const Project& p) { return p.plan.prefer == Prefer::SeenLines; });
    choiceEntry("planPrefers", 0, [](const Project& p) { return p.plan.prefer == Prefer::OneReference; });
    choiceEntry("squareCorner", 4, [](const Project& p) { return p.panel.squareCorner == SquareCorner::All; });
}

TEST_F(PanelOnSheet, MaterialAndNotes) {
    key(Qt::Key_F6);
    choiceEntry("panelMaterial", 2, [](const Project& p) { return p.panel.material == "birch-plywood"; });
    auto* box = found<QComboBox>("panelMaterial");
    const auto typeMaterial = [&](const char* text) {
        box->lineEdit()->setFocus();
        box->lineEdit()->selectAll();
        QTest::keyClicks(box->lineEdit(), QString::fromUtf8(text));
        QTest::keyClick(box->lineEdit(), Qt::Key_Return);
    };
    entry([&] { typeMaterial("phenolic"); }, [](const Project& p) { return p.panel.material == "phenolic"; }, "another material");
    typeMaterial("Black MDF");
    EXPECT_FALSE(trouble("panelMaterialTrouble").isEmpty());
    EXPECT_EQ(project().panel.material, "phenolic");
    auto* notes = found<QPlainTextEdit>("projectNotes");
    entry(
        [&] {
            notes->setFocus();
            notes->selectAll();
            QTest::keyClicks(notes, QStringLiteral("Mark the back first."));
            QTest::keyClick(notes, Qt::Key_Tab);
        },
        [](const Project& p) { return p.notes == "Mark the back first."; }, "notes");
}

// Expected from: pencil. A kerf of 12 in a panel of 12 is no kerf.
TEST_F(PanelOnSheet, AKerfThroughThePanelIsToldUnderItsField) {
    key(Qt::Key_F6);
    const Project before = project();
    typeIn("kerfDepth", "12");
    EXPECT_EQ(trouble("kerfDepthTrouble"), QStringLiteral("A kerf is less deep than the panel's thickness of 12.0 mm."));
    EXPECT_EQ(project(), before);
}

// Pictures for a person to judge: KERFWALL_BENCH_PICTURES names their folder.
TEST_F(BenchOnSheet, BenchPictures) {
    const QString folder = qEnvironmentVariable("KERFWALL_BENCH_PICTURES");
    if (folder.isEmpty()) GTEST_SKIP() << "no folder named";
    unfold("saw1");
    for (const Look look : {Look::Light, Look::Dark}) {
        m_window.setLook(look);
        for (const QSize size : {QSize(1280, 720), QSize(1024, 680)}) {
            m_window.resize(size);
            QTest::qWait(20);
            auto* card = m_window.findChild<JobCard*>();
            const QString end = QStringLiteral("-%1-%2.png").arg(size.width()).arg(look == Look::Dark ? QStringLiteral("dark") : QStringLiteral("light"));
            m_window.grab().save(QDir(folder).filePath(QStringLiteral("bench") + end));
            card->ensureWidgetVisible(found<QPushButton>("addClamp"));
            m_window.grab().save(QDir(folder).filePath(QStringLiteral("bench-end") + end));
            key(Qt::Key_F7);
            QTest::qWait(20);
            m_window.grab().save(QDir(folder).filePath(QStringLiteral("use") + end));
            key(Qt::Key_F6);
            QTest::qWait(20);
            m_window.grab().save(QDir(folder).filePath(QStringLiteral("panel") + end));
            key(Qt::Key_F7, Qt::ShiftModifier);
        }
    }
}

}  // namespace
}  // namespace kerfwall
