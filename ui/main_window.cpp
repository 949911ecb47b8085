// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/main_window.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QIcon>
#include <QScreen>
#include <QSettings>
#include <QVBoxLayout>
#include <algorithm>

#include "core/geometry/picking.h"
#include "ui/bench_form.h"
#include "ui/bore_tool.h"
#include "ui/clamp_tool.h"
#include "ui/cut_tool.h"
#include "ui/entry_line.h"
#include "ui/fence_form.h"
#include "ui/fence_tool.h"
#include "ui/first_sheet.h"
#include "ui/header_line.h"
#include "ui/job_card.h"
#include "ui/kept_work.h"
#include "ui/keys_form.h"
#include "ui/laying_tool.h"
#include "ui/line_form.h"
#include "ui/measure_tool.h"
#include "ui/notice_bar.h"
#include "ui/pick_tool.h"
#include "ui/plan_view.h"
#include "ui/print_form.h"
#include "ui/record_form.h"
#include "ui/screen_form.h"
#include "ui/sheet_form.h"
#include "ui/sheet_views.h"
#include "ui/side_view_panel.h"
#include "ui/sizes_on_plan.h"
#include "ui/spoken.h"
#include "ui/step_view.h"
#include "ui/tool_strip.h"
#include "ui/wanted_form.h"
#include "ui/waste_tool.h"

// A static library's resources have to be named; the macro works outside of namespaces alone.
static void takeResources() { Q_INIT_RESOURCE(kerfwall); }

namespace kerfwall {
namespace {

constexpr int kSettleTime = 150;  // ms without a change until the views are put into words
constexpr int kColumnWidth = 400;

}  // namespace

MainWindow::MainWindow(QWidget* parent) : QMainWindow(parent) {
    takeResources();
    setObjectName(QStringLiteral("sheet"));
    resize(QSize(1360, 860).boundedTo(screen()->availableSize() - QSize(8, 40)));  // room for the window's frame
    setAcceptDrops(true);
    setWindowIcon(QIcon(QStringLiteral(":/kerfwall.svg")));
    makeTools();
    layOut();
    makeMenus();
    connectHand();
    chooseTool(LayAt);
    refreshNames();
    m_plan->setFocus();
    refreshFirst();
    m_first->focusFirst();
}

/// What lies on the sheet leaves before the session it reads: a field that loses the focus still asks for its value.
MainWindow::~MainWindow() {
    hide();
    delete takeCentralWidget();
}

void MainWindow::makeTools() {
    m_pick = new PickTool(m_session, m_selection, this);
    m_tools = {m_pick,                                      new LayingTool(m_session, m_selection, this),
               new WasteTool(m_session, m_selection, this), new BoreTool(m_session, m_selection, this),
               new ClampTool(m_session, m_selection, this), new FenceTool(m_session, m_selection, this),
               new MeasureTool(m_session, m_selection, this), new CutTool(m_session, m_selection, this)};
    m_pick->setObjectName(QStringLiteral("pick"));
    for (Tool* tool : m_tools) {
        connect(tool, &Tool::updated, this, [this, tool] {
            if (tool != m_tool) return;
            m_firstAside = m_firstAside || tool->isBusy();
            if (tool->isBusy()) leaveSteps();
            refreshFirst();
            refreshEntry();
        });
    }
}

void MainWindow::layOut() {
    auto* sheet = new QWidget(this);
    auto* rows = new QVBoxLayout(sheet);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(0);
    m_header = new HeaderLine(m_session, sheet);
    m_strip = new ToolStrip(m_tools, sheet);
    m_views = new SheetViews(m_session, m_selection, sheet);
    m_plan = m_views->plan();
    m_steps = m_views->steps();
    m_notice = new NoticeBar(m_views);
    m_views->layOver(m_notice);
    m_sizes = new SizesOnPlan(m_session, m_selection, *m_plan, [this] { return m_tool == m_pick && !m_pick->isBusy(); });
    m_card = new JobCard(m_session, sheet);
    m_card->setFixedWidth(kColumnWidth);
    m_entry = new EntryLine(sheet);
    m_panelForm = makePanelForm(m_session, m_card->widget());
    m_useForm = makeUseForm(m_session, m_card->widget());
    m_workpieceForm = makeWorkpieceForm(m_session, m_card->widget());
    m_fenceForm = makeFenceForm(m_session, m_selection, m_card->widget());
    m_wantedForm = new WantedForm(m_session, m_selection, m_card->widget());
    m_benchForm = new BenchForm(m_session, m_card->widget());
    m_screenForm = new ScreenForm(m_session, m_plan, m_card->widget());
    m_lineForm = new LineForm(m_session, m_selection, m_card->widget());
    m_recordForm = new RecordForm(m_session, m_selection, m_card->widget());
    m_printForm = new PrintForm(m_session, m_card->widget());
    m_keysForm = new KeysForm(*m_header->menus(), m_card->widget());
    layFirstSheet();
    auto* middle = new QHBoxLayout;
    middle->setSpacing(0);
    middle->addWidget(m_strip);
    middle->addWidget(m_views, 1);
    middle->addWidget(m_card);
    rows->addWidget(m_header);
    rows->addLayout(middle, 1);
    rows->addWidget(m_entry);
    setCentralWidget(sheet);
}

void MainWindow::connectHand() {
    connect(m_strip, &ToolStrip::chosen, this, &MainWindow::chooseTool);
    connect(m_plan, &PlanView::typedOver, m_entry, &EntryLine::beginWith);
    connect(m_plan, &PlanView::fieldAsked, this, [this] {
        if (m_pick->hasDeed()) return m_pick->entered();
        m_fieldFromPlan = true;
        m_entry->focusFirstField();
    });
    connect(m_plan, &PlanView::escaped, m_notice, &NoticeBar::close);
    connect(m_plan, &PlanView::deleteAsked, this, &MainWindow::deletePicked);
    connect(m_entry, &EntryLine::typed, this, [this](int field, std::optional<double> value) { m_tool->typed(field, value); });
    connect(m_entry, &EntryLine::chose, this, [this](int field, int option) { m_tool->chose(field, option); });
    connect(m_entry, &EntryLine::entered, this, [this] {
        const bool back = m_fieldFromPlan || m_tool->takesNumbers();
        m_tool->entered();
        if (back && !m_tool->takesNumbers()) m_plan->setFocus();  // Enter leads to the numbers and back again
        m_fieldFromPlan = false;
    });
    connect(m_entry, &EntryLine::settled, this, [this] {
        // A click on the plan ends a line in hand by itself; what was typed goes along with it.
        if (!m_tool->isBusy()) m_tool->settled();
    });
    connect(m_entry, &EntryLine::left, this, [this] {
        m_tool->cancel();
        m_plan->setFocus();
    });
    connect(m_entry, &EntryLine::unitsAsked, this, &MainWindow::switchUnits);
    connect(m_sizes, &SizesOnPlan::pointed, m_pick, &PickTool::hint);
    connect(m_pick, &PickTool::finished, this, [this] { m_plan->setFocus(); });
    connect(m_plan, &PlanView::findingClicked, m_card, &JobCard::openFinding);
    connect(m_card, &JobCard::pointed, m_plan, &PlanView::pointOut);
    connect(m_card, &JobCard::stepAsked, m_steps, &StepView::open);
    connect(m_card, &JobCard::stepLeft, this, &MainWindow::leaveSteps);
    connect(m_steps, &StepView::opened, m_card, &JobCard::chooseStep);
    connect(m_steps, &StepView::opened, this, &MainWindow::refreshEntry);
    connect(m_steps, &StepView::closed, this, [this] {
        m_card->chooseStep(std::nullopt);
        m_plan->pointOut({}, std::nullopt);
        refreshEntry();
        m_plan->setFocus();
    });
    connect(m_card, &JobCard::cutoutPointed, &m_selection, &Selection::pickCutout);
    connect(m_card, &JobCard::holePointed, &m_selection, &Selection::pickHole);
    connect(m_card, &JobCard::fencePointed, &m_selection, &Selection::pickFence);
    for (SheetForm* form : {m_panelForm, m_useForm, m_workpieceForm, m_fenceForm}) {
        connect(form, &SheetForm::closeAsked, this, &MainWindow::layNoForm);
    }
    connect(m_benchForm, &BenchForm::closeAsked, this, &MainWindow::layNoForm);
    connect(m_wantedForm, &WantedForm::closeAsked, this, &MainWindow::layNoForm);
    connect(m_lineForm, &LineForm::closeAsked, this, &MainWindow::layNoForm);
    connect(m_recordForm, &RecordForm::closeAsked, this, &MainWindow::layNoForm);
    connect(m_printForm, &PrintForm::closeAsked, this, &MainWindow::layNoForm);
    connect(m_keysForm, &KeysForm::closeAsked, this, &MainWindow::layNoForm);
    connect(m_printForm, &PrintForm::sheetsLaid, m_plan, &PlanView::laySheets);
    connect(m_printForm, &PrintForm::printAsked, this, &MainWindow::print);
    connect(m_printForm, &PrintForm::pdfAsked, this, &MainWindow::askPatternPdf);
    connect(m_wantedForm, &WantedForm::laid, this, &MainWindow::layNoForm);
    connect(m_wantedForm, &WantedForm::foreseen, m_plan, &PlanView::foresee);
    connect(m_wantedForm, &WantedForm::clickAsked, this, &MainWindow::clickCorners);
    connect(m_wantedForm->cornerTool(), &Tool::updated, this, [this] {
        if (m_tool == m_wantedForm->cornerTool()) refreshEntry();
    });
    connectFirstSheet();
    connect(m_screenForm, &ScreenForm::closeAsked, this, &MainWindow::layNoForm);
    connect(m_screenForm, &ScreenForm::measured, m_plan, &PlanView::showLifeSize);
    connect(&m_selection, &Selection::changed, this, [this] {
        refreshFenceForm();
        refreshEntry();
        refreshNames();
    });
    connect(&m_session, &Session::changed, this, [this] {
        m_selection.pick(stillThere(m_session.project(), m_selection.picked()));
        refreshEntry();
        refreshNames();
        refreshFirst();
        m_words.start();
    });
    connect(&m_session, &Session::cutMoved, this, [this] {
        refreshEntry();
        m_words.start();
    });
    connect(&m_session, &Session::told, m_notice, &NoticeBar::tell);
    connect(&m_session, &Session::opened, this, [this] {
        m_selection.clear();
        for (Tool* tool : m_tools) {
            tool->cancel();
            tool->leave();
        }
    });
    m_words.setSingleShot(true);
    m_words.setInterval(kSettleTime);
    connect(&m_words, &QTimer::timeout, this, [this] {
        m_plan->setAccessibleDescription(planInWords(m_session));
        for (const CutDirection direction : kCutDirections) {
            m_views->side(direction)->setAccessibleDescription(sideViewInWords(m_session, direction));
        }
    });
    m_words.start();
}

void MainWindow::chooseTool(int index) {
    takeTool(m_tools.at(static_cast<std::size_t>(index)));
    m_strip->choose(index);
    m_wantedForm->showClicking(false);
}

void MainWindow::takeTool(Tool* next) {
    leaveSteps();
    if (m_tool && m_tool != next) {
        if (m_tool->isBusy()) m_tool->cancel();
        m_session.commit();
    }
    m_tool = next;
    m_plan->setTool(m_tool);
    m_plan->setFocus();
    refreshFenceForm();
    refreshEntry();
}

void MainWindow::clickCorners(bool clicking) {
    Tool* corners = m_wantedForm->cornerTool();
    if (clicking == (m_tool == corners)) return;
    if (clicking) m_toolBefore = static_cast<int>(std::ranges::find(m_tools, m_tool) - m_tools.begin());
    if (clicking) takeTool(corners);
    else chooseTool(m_toolBefore);
}

void MainWindow::refreshEntry() {
    if (!m_tool) return;
    EntryState state = m_tool->entry();
    if (isFirst()) state.sentence = tr("Take one of the offers to begin, or a tool to draw on the panel that lies here.");
    if (m_steps->step()) state = {{}, tr("Arrow or Page keys go from step to step, Home and End to the first and the last; Esc goes back to the plan."), false};
    m_entry->show(state, m_session.project().units);
}

void MainWindow::refreshNames() {
    setWindowTitle(m_session.name() + QStringLiteral("[*] – Kerfwall"));
    setWindowModified(!m_session.isSaved());
    for (QAction* action : m_onPicked) action->setEnabled(!m_selection.isEmpty());
    m_showPicked->setEnabled(!m_selection.isEmpty());
    m_undo->setEnabled(!m_session.undoName().isEmpty());
    m_undo->setText(m_session.undoName().isEmpty() ? tr("&Undo") : tr("&Undo: %1").arg(m_session.undoName()));
    m_redo->setEnabled(!m_session.redoName().isEmpty());
    m_redo->setText(m_session.redoName().isEmpty() ? tr("&Redo") : tr("&Redo: %1").arg(m_session.redoName()));
}

void MainWindow::switchUnits() {
    Project next = m_session.project();
    next.units = next.units == Units::Inches ? Units::Millimetres : Units::Inches;
    m_session.change(next.units == Units::Inches ? tr("Show inches") : tr("Show millimetres"), next);
}

void MainWindow::layForm(SheetForm* form) {
    m_card->layForm(form);
    form->focusFirst();
    refreshFirst();
}

void MainWindow::layBenchForm() {
    m_session.commit();
    m_card->layForm(m_benchForm);
    m_benchForm->focusFirst();
    refreshFirst();
}

/// The picked fence's size goes with it on the card while fences are in hand, and never in another form's place.
void MainWindow::refreshFenceForm() {
    const bool picked = m_selection.fence().has_value();
    if (picked && m_tool == m_tools.at(FenceAt) && !m_card->form()) m_card->layForm(m_fenceForm);
    if (!picked && m_card->form() == m_fenceForm) m_card->layForm(nullptr);
    refreshFirst();
}

void MainWindow::layFenceForm() {
    if (!m_selection.fence()) return m_notice->tell(tr("No fence is picked: take Fix a fence, click the fence, and its size stands on the job card."));
    layForm(m_fenceForm);
}

void MainWindow::layLineForm() {
    m_session.commit();
    m_card->layForm(m_lineForm);
    m_lineForm->focusFirst();
    refreshFirst();
}

void MainWindow::layRecordForm() {
    m_session.commit();
    m_card->layForm(m_recordForm);
    m_recordForm->focusFirst();
    refreshFirst();
}

void MainWindow::layNoForm() {
    m_card->layForm(nullptr);
    m_plan->setFocus();
    refreshFirst();
}

void MainWindow::setLook(Look look) {
    wear(*qApp, look);
    QSettings().setValue(QStringLiteral("look"), static_cast<int>(look));
    m_card->dress();
    update();
}

int runWindow(const QString& file) {
    QCoreApplication::setOrganizationName(QStringLiteral("Kerfwall"));
    const QVariant look = QSettings().value(QStringLiteral("look"));
    wear(*qApp, static_cast<Look>(std::clamp(look.toInt(), 0, 2)));
    MainWindow window;
    window.keepUnsaved(keptWorkFolder());
    window.show();
    if (!file.isEmpty()) window.openFile(file);
    window.offerLostWork();
    return QApplication::exec();
}

}  // namespace kerfwall
