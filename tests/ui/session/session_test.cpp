// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>
#include <chrono>
#include <thread>

#include "core/says/project_text.h"

namespace kerfwall {
namespace {

/// `count` upright lines 20 apart, waste between the first two: more than are answered at once.
Project fence(int count) {
    Project project;
    project.panel.width = 1000;
    project.panel.height = 250;
    project.panel.thickness = 12;
    for (int i = 0; i < count; ++i) {
        LayoutLine line;
        line.id = "L" + std::to_string(i);
        line.place = ByOffset{Edge::Left, 20.0 + 20.0 * i};
        project.lines.push_back(line);
    }
    Cutout cutout;
    cutout.id = "gap";
    cutout.seeds = {{30, 125}};
    project.cutouts = {cutout};
    return project;
}

Project withFirstAt(Project project, double x) {
    project.lines.front().place = ByOffset{Edge::Left, x};
    return project;
}

double drawnArea(const Session& session) { return session.solved().cutouts.at(0).drawnArea; }

constexpr int kMany = static_cast<int>(Session::kLinesAtOnce) + 4;

class BusySession : public testing::Test {
protected:
    void SetUp() override { m_session.start(fence(kMany)); }
    Session m_session;
};

// Expected from: pencil. The first gap is 20 wide and 250 high; its first line moved to 15 makes it 25 wide.
TEST_F(BusySession, APreviewOfManyLinesFollowsFromTheEventLoopWithAllItsAnswers) {
    m_session.begin(QStringLiteral("Move"));
    m_session.preview(withFirstAt(m_session.before(), 15));
    EXPECT_EQ(m_session.project(), m_session.before());
    EXPECT_NEAR(drawnArea(m_session), 5000, 1e-9);
    QSignalSpy changed(&m_session, &Session::changed);
    ASSERT_TRUE(changed.wait());
    EXPECT_EQ(m_session.project(), withFirstAt(fence(kMany), 15));
    EXPECT_NEAR(drawnArea(m_session), 6250, 1e-9);
}

TEST_F(BusySession, LettingGoWaitsForTheNewestPlaceAndIsOneStep) {
    m_session.begin(QStringLiteral("Move"));
    for (int x = 5; x <= 16; ++x) m_session.preview(withFirstAt(m_session.before(), x));
    m_session.commit();
    EXPECT_EQ(m_session.project(), withFirstAt(fence(kMany), 16));
    EXPECT_NEAR(drawnArea(m_session), 6000, 1e-9);
    m_session.undo();
    EXPECT_EQ(m_session.project(), fence(kMany));
    EXPECT_EQ(m_session.undoName(), QString());
}

TEST_F(BusySession, TheNewestOfManyPlacesIsTheLastShown) {
    m_session.begin(QStringLiteral("Move"));
    for (int x = 5; x <= 16; ++x) m_session.preview(withFirstAt(m_session.before(), x));
    EXPECT_TRUE(QTest::qWaitFor([&] { return m_session.project() == withFirstAt(fence(kMany), 16); }));
    QTest::qWait(50);
    EXPECT_EQ(m_session.project(), withFirstAt(fence(kMany), 16));
}

TEST_F(BusySession, WhatWasAskedBeforeTheHandLeftIsNeverShown) {
    m_session.begin(QStringLiteral("Move"));
    m_session.preview(withFirstAt(m_session.before(), 15));
    m_session.abandon();
    QTest::qWait(100);
    EXPECT_EQ(m_session.project(), fence(kMany));
    EXPECT_NEAR(drawnArea(m_session), 5000, 1e-9);
}

// An answer that was ready but not yet shown when the hand left belongs to no later hand.
TEST_F(BusySession, AnAnswerToAnEarlierHandIsNotShownInTheNext) {
    m_session.begin(QStringLiteral("Move"));
    m_session.preview(withFirstAt(m_session.before(), 15));
    std::this_thread::sleep_for(std::chrono::milliseconds(200));  // answered, and no event was heard
    m_session.abandon();
    m_session.begin(QStringLiteral("Move again"));
    bool wasShown = false;
    QObject::connect(&m_session, &Session::changed, &m_session,
                     [&] { wasShown = wasShown || m_session.project() == withFirstAt(fence(kMany), 15); });
    m_session.preview(withFirstAt(m_session.before(), 16));
    EXPECT_TRUE(QTest::qWaitFor([&] { return m_session.project() == withFirstAt(fence(kMany), 16); }));
    EXPECT_FALSE(wasShown);
}

TEST_F(BusySession, AnotherFileOpenedMeanwhileStays) {
    m_session.begin(QStringLiteral("Move"));
    m_session.preview(withFirstAt(m_session.before(), 15));
    m_session.start(fence(2));
    QTest::qWait(100);
    EXPECT_EQ(m_session.project(), fence(2));
}

TEST_F(BusySession, TheWindowMayCloseWhileAnswersAreWorkedOut) {
    for (int i = 0; i < 20; ++i) {
        Session session;
        session.start(fence(kMany));
        session.begin(QStringLiteral("Move"));
        session.preview(withFirstAt(session.before(), 15));
    }
}

// Expected from: the rule that the same project gives the same answers, on several threads at once too.
TEST(AnswersOnThreads, AreTheSameAsOnOne) {
    const Project project = fence(kMany);
    const AnswersPtr alone = answersTo(project);
    std::vector<AnswersPtr> all(4);
    {
        std::vector<std::jthread> threads;
        for (AnswersPtr& each : all) {
            threads.emplace_back([&each, &project] {
                for (int i = 0; i < 5; ++i) each = answersTo(project);
            });
        }
    }
    for (const AnswersPtr& each : all) {
        EXPECT_EQ(each->findings, alone->findings);
        EXPECT_EQ(each->order, alone->order);
        EXPECT_EQ(each->solved.cutouts.at(0).opening, alone->solved.cutouts.at(0).opening);
    }
}

}  // namespace
}  // namespace kerfwall
