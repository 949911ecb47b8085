// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench_form.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <array>

#include "core/says/changing_bench.h"
#include "ui/bench_rows.h"
#include "ui/folded_list.h"
#include "ui/my_bench.h"
#include "ui/quiet_box.h"
#include "ui/session.h"

namespace kerfwall {
namespace {

constexpr std::array kKinds{SawKind::RipFence, SawKind::CrosscutSled, SawKind::MitreGauge, SawKind::GuideRail,
                            SawKind::SlidingMitre};
constexpr double kUsualClampHole = 8;   // mm; common practice, no source
constexpr double kUsualInsert = 50;     // mm

QStringList sawLines(const Project& project) {
    QStringList lines;
    for (const Saw& saw : benchOf(project).saws) {
        lines << QString::number(static_cast<int>(saw.kind)) + QLatin1Char('\t') + sawHeading(saw, project.units);
    }
    return lines;
}

QStringList clampLines(const Project& project) {
    QStringList lines;
    for (const Clamp& clamp : benchOf(project).clamps) lines << QLatin1Char('\t') + clampHeading(clamp, project.units);
    return lines;
}

}  // namespace

BenchForm::BenchForm(Session& session, QWidget* parent)
    : QFrame(parent), m_session(session), m_column(new QVBoxLayout(this)) {
    setObjectName(QStringLiteral("benchForm"));
    m_column->setContentsMargins(0, 0, 0, 18);
    m_column->setSpacing(6);
    addHeader();
    addSaws();
    const auto part = [this](const QString& title, void (*add)(SheetForm&)) {
        auto* form = new SheetForm(title, m_session, this, SheetForm::Kind::Part);
        add(*form);
        connect(form, &SheetForm::closeAsked, this, &BenchForm::closeAsked);
        m_column->addWidget(form);
    };
    part(tr("Trimming"), addTrimmingRows);
    part(tr("Drills, bits and bushes"), addDrillRows);
    addClamps();
    connect(&m_session, &Session::changed, this, &BenchForm::refresh);
    refresh();
    hide();
}

QPushButton* BenchForm::button(const QString& text, const char* name) {
    auto* made = new QPushButton(text, this);
    made->setObjectName(QString::fromLatin1(name));
    return made;
}

void BenchForm::addGroup(const QString& title) {
    auto* heading = new QLabel(title, this);
    heading->setObjectName(QStringLiteral("groupTitle"));
    heading->setIndent(0);
    m_column->addWidget(heading);
}

void BenchForm::addHeader() {
    auto* head = new QGridLayout;
    head->setColumnStretch(0, 1);
    auto* heading = new QLabel(tr("The bench"), this);
    heading->setObjectName(QStringLiteral("sectionTitle"));
    auto* done = button(tr("Done"), "benchDone");
    m_whose = new QLabel(this);
    m_whose->setObjectName(QStringLiteral("faint"));
    m_whose->setWordWrap(true);
    m_trouble = new QLabel(this);
    m_trouble->setObjectName(QStringLiteral("benchTrouble"));
    m_trouble->setProperty("trouble", true);
    m_trouble->setWordWrap(true);
    m_trouble->hide();
    m_keep = button(tr("Keep as my bench"), "benchKeep");
    m_takeMine = button(tr("Take my bench"), "benchTakeMine");
    m_takeStock = button(tr("Take the stock bench"), "benchTakeStock");
    head->addWidget(heading, 0, 0);
    head->addWidget(done, 0, 1);
    m_column->addLayout(head);
    m_column->addWidget(m_whose);
    auto* ways = new QGridLayout;
    ways->addWidget(m_keep, 0, 0, 1, 2);
    ways->addWidget(m_takeMine, 1, 0);
    ways->addWidget(m_takeStock, 1, 1);
    m_column->addLayout(ways);
    m_column->addWidget(m_trouble);
    connect(done, &QPushButton::clicked, this, &BenchForm::closeAsked);
    connect(m_keep, &QPushButton::clicked, this, [this] {
        keepAsMyBench(benchOf(m_session.project()));
        refresh();
    });
    connect(m_takeMine, &QPushButton::clicked, this, [this] { takeBench(tr("Take my bench"), myBench()); });
    connect(m_takeStock, &QPushButton::clicked, this, [this] { takeBench(tr("Take the stock bench"), stockBench()); });
}

void BenchForm::takeBench(const QString& step, const std::optional<Bench>& bench) {
    m_trouble->hide();
    if (!bench) return;
    const auto next = withBench(m_session.project(), *bench);
    if (next) return m_session.change(step, *next);
    m_trouble->setText(QString::fromStdString(next.error()));
    m_trouble->show();
}

void BenchForm::addSaws() {
    addGroup(tr("Saws"));
    m_saws = new FoldedList(m_session,
                            {QStringLiteral("saw"), tr("Take this saw away"), sawLines,
                             [this](std::size_t saw, QWidget* parent) { return makeSawForm(m_session, saw, parent); },
                             [this](std::size_t saw) { m_session.change(tr("Take a saw away"), withoutSaw(m_session.project(), saw)); }},
                            this);
    connect(m_saws, &FoldedList::closeAsked, this, &BenchForm::closeAsked);
    auto* kinds = new QuietBox(this);
    kinds->setObjectName(QStringLiteral("newSawKind"));
    kinds->setAccessibleName(tr("Kind of the saw to add"));
    for (const SawKind kind : kKinds) kinds->addItem(sawKindText(kind));
    auto* add = button(tr("Add it"), "addSaw");
    add->setAccessibleName(tr("Add a saw of that kind"));
    auto* row = new QHBoxLayout;
    row->addWidget(kinds, 1);
    row->addWidget(add);
    m_column->addWidget(m_saws);
    m_column->addLayout(row);
    connect(add, &QPushButton::clicked, this, [this, kinds] {
        const SawKind kind = kKinds.at(static_cast<std::size_t>(kinds->currentIndex()));
        m_session.change(tr("Add a saw"), withSaw(m_session.project(), kind));
        m_saws->unfold(benchOf(m_session.project()).saws.size() - 1);
    });
}

void BenchForm::addClamps() {
    addGroup(tr("Clamps"));
    m_clamps = new FoldedList(m_session,
                              {QStringLiteral("clamp"), tr("Take this clamp away"), clampLines,
                               [this](std::size_t clamp, QWidget* parent) { return makeClampForm(m_session, clamp, parent); },
                               [this](std::size_t clamp) {
                                   Project next = m_session.project();
                                   auto& clamps = ownBench(next).clamps;
                                   clamps.erase(clamps.begin() + static_cast<std::ptrdiff_t>(clamp));
                                   m_session.change(tr("Take a clamp away"), next);
                               }},
                              this);
    connect(m_clamps, &FoldedList::closeAsked, this, &BenchForm::closeAsked);
    auto* add = button(tr("Add a clamp"), "addClamp");
    m_column->addWidget(m_clamps);
    m_column->addWidget(add, 0, Qt::AlignRight);
    connect(add, &QPushButton::clicked, this, [this] {
        Project next = m_session.project();
        ownBench(next).clamps.push_back({kUsualClampHole, kUsualInsert, 0, 0, {}});
        m_session.change(tr("Add a clamp"), next);
        m_clamps->unfold(next.bench->clamps.size() - 1);
    });
}

void BenchForm::refresh() {
    const Bench& now = benchOf(m_session.project());
    const auto mine = myBench();
    const bool isMine = mine && *mine == now;
    const bool isStock = now == stockBench();
    m_whose->setText(isMine    ? tr("This template is made with my bench; new templates begin with it.")
                     : isStock ? tr("This template is made with the stock bench.")
                               : tr("This template has a bench of its own."));
    m_keep->setEnabled(!isMine);
    m_takeMine->setEnabled(mine && !isMine);
    m_takeStock->setEnabled(!isStock);
}

void BenchForm::focusFirst() { findChild<QPushButton*>(QStringLiteral("benchDone"))->setFocus(Qt::ShortcutFocusReason); }

}  // namespace kerfwall
