// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QMainWindow>
#include <QTimer>
#include <functional>
#include <vector>

#include "core/shop/stock_panels.h"
#include "ui/deed.h"
#include "ui/look.h"
#include "ui/selection.h"
#include "ui/session.h"

class QMenu;

namespace kerfwall {

class BenchForm;
class EntryLine;
class FirstSheet;
class HeaderLine;
class JobCard;
class KeptWork;
class KeysForm;
class LineForm;
class NoticeBar;
class PickTool;
class PlanView;
class PrintForm;
class RecordForm;
class ScreenForm;
class SheetForm;
class SheetViews;
class SizesOnPlan;
class StepView;
class Tool;
class ToolStrip;
class WantedForm;

/// The sheet: header, hand tools, plan over side view, job card, entry line.
class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    explicit MainWindow(QWidget* parent = nullptr);
    ~MainWindow() override;

    Session& session() { return m_session; }
    Selection& selection() { return m_selection; }
    PlanView& plan() { return *m_plan; }
    NoticeBar& notice() { return *m_notice; }

    /// Opens a file, or tells on the sheet why not; asks first where changes would be lost.
    void openFile(const QString& path);
    /// Keeps what is not saved in that folder (kept_work.h).
    void keepUnsaved(const QString& folder);
    /// Asks what is to become of work that was lost there.
    void offerLostWork();
    /// Saves to that file; false, and told on the sheet, where it could not.
    bool saveTo(const QString& path);
    /// Publishes the maker's papers into that folder.
    bool publishTo(const QString& dir);
    /// Takes the outline an SVG holds as the workpiece or as wanted, which it asks, or tells on the sheet why not.
    void importOutline(const QString& path);
    /// Writes the pattern, as the print form has it, as a PDF to that file; false, and told on the sheet, where it could not.
    bool writePatternTo(const QString& path);
    static QString writtenSentence(const QString& path);
    void chooseTool(int index);
    void setLook(Look look);

    enum Tools { PickAt, LayAt, WasteAt, BoreAt, ClampAt, FenceAt, MeasureAt, CutAt };

protected:
    void closeEvent(QCloseEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void makeTools();
    void layOut();
    void connectHand();
    void makeMenus();
    void makeFileMenu();
    void makeEditMenu();
    void makePickedMenu(QMenu* edit);
    void makeViewMenu();
    void makeSideViewMenu(QMenu* view);
    void makeLayerMenu(QMenu* view);
    void showPicked();
    void showLifeSize();
    void layScreenForm();
    void goToFinding(int by);
    void goToStep(int by);
    void leaveSteps();
    void refreshEntry();
    void refreshNames();
    void deletePicked();
    void pickAll();
    void begin(DeedKind kind);
    void copyPicked();
    void cutPicked();
    void paste();
    void doublePicked();
    /// Puts things on the sheet where there is room for them.
    void put(const Project& snippet, const QString& name);
    void openWindow();
    void setNextSize();
    void switchUnits();
    void layForm(SheetForm* form);
    void layFirstSheet();
    void connectFirstSheet();
    void refreshFirst();
    bool isFirst() const;
    void putFirstAside();
    void layWantedForm();
    void chooseShelf();
    void openSample(const QString& path);
    void switchRack();
    void takeTool(Tool* next);
    /// Takes the hand that clicks a wanted opening's corners, or puts it back.
    void clickCorners(bool clicking);
    void layBenchForm();
    void layFenceForm();
    void refreshFenceForm();
    void layLineForm();
    void layRecordForm();
    void layPrintForm();
    void layNoForm();
    void layKeys();

    void askNew();
    void askOpen();
    void save();
    void saveAs();
    void askOutline();
    void askLabels();
    void takeAsWorkpiece(const std::vector<Point>& outline);
    void takeAsWanted(const std::vector<Point>& outline);
    void askPublish();
    void print();
    void askPatternPdf();
    void remember(const QString& path);
    QStringList lastFiles() const;
    void showRecent();
    /// Does it at once where nothing would be lost, else asks on the sheet.
    void whenSafe(const std::function<void()>& does);

    Session m_session;
    Selection m_selection;
    std::vector<Tool*> m_tools;
    Tool* m_tool = nullptr;
    PickTool* m_pick = nullptr;
    SizesOnPlan* m_sizes = nullptr;
    HeaderLine* m_header = nullptr;
    NoticeBar* m_notice = nullptr;
    ToolStrip* m_strip = nullptr;
    PlanView* m_plan = nullptr;
    SheetViews* m_views = nullptr;
    JobCard* m_card = nullptr;
    StepView* m_steps = nullptr;
    EntryLine* m_entry = nullptr;
    SheetForm* m_panelForm = nullptr;
    SheetForm* m_useForm = nullptr;
    SheetForm* m_workpieceForm = nullptr;
    BenchForm* m_benchForm = nullptr;
    SheetForm* m_fenceForm = nullptr;
    WantedForm* m_wantedForm = nullptr;
    int m_toolBefore = LayAt;  // taken again after corners were clicked
    ScreenForm* m_screenForm = nullptr;
    FirstSheet* m_first = nullptr;  // on a sheet with nothing laid yet
    StockPanel m_firstPanel;        // that lay there when the sheet was new
    bool m_fieldFromPlan = false;   // Enter over the plan led to the entry line
    bool m_firstAside = false;      // until the next new sheet
    QAction* m_rack = nullptr;
    LineForm* m_lineForm = nullptr;
    RecordForm* m_recordForm = nullptr;
    PrintForm* m_printForm = nullptr;
    KeysForm* m_keysForm = nullptr;
    KeptWork* m_kept = nullptr;
    QString m_keptFolder;
    QMenu* m_recent = nullptr;
    QAction* m_undo = nullptr;
    QAction* m_redo = nullptr;
    std::vector<QAction*> m_onPicked;  // what is done to what is picked
    QAction* m_showPicked = nullptr;
    QTimer m_words;  // the views' words follow once a change has settled
    bool m_closing = false;
};

/// Opens the window with that file in it ("" for an empty sheet) and runs until it is closed.
/// Requires  a QApplication.
/// Gives     the exit status: 0.
int runWindow(const QString& file);

}  // namespace kerfwall
