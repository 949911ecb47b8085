// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <QTimer>
#include <expected>
#include <optional>
#include <vector>

#include "core/drawing/cutting_line.h"
#include "ui/answerer.h"

namespace kerfwall {

/// The project that lies on the sheet, its answers, and the way it came about. Everything the maker does goes
/// through here as a whole new project; the answers follow at once.
class Session : public QObject {
    Q_OBJECT

public:
    explicit Session(QObject* parent = nullptr);

    const Project& project() const { return m_shown->project; }
    const Solved& solved() const { return m_shown->solved; }
    const std::vector<Finding>& findings() const { return m_shown->findings; }
    const OrderOfWork& order() const { return m_shown->order; }
    /// All of it, with what follows a moment after each change: how far walls give. Ends what is in hand and waits for the rest.
    const Answers& whole();

    QString path() const { return m_path; }
    /// What the sheet is called: its title, else its file's name.
    QString name() const;
    bool isSaved() const { return m_saved == project(); }

    /// A new sheet with a panel and nothing on it.
    void startNew();
    /// Puts that project on the sheet, as one that was never saved.
    void start(const Project& project);
    /// Puts a project on the sheet that belongs to that file, or to none, and is not saved as it is.
    void takeUp(const Project& project, const QString& path);
    /// Opens a file. Refuses it with one sentence that names the file and the place; the sheet stays as it was.
    [[nodiscard]] std::expected<void, QString> open(const QString& path);
    /// Writes the project; the file that stood there is untouched where that fails.
    [[nodiscard]] std::expected<void, QString> save(const QString& path);

    /// One step that can be undone: `name` completes "Undo: ".
    void change(const QString& name, const Project& next);
    /// The same for a project whose cutouts are marked to suit its own lines: no seed is carried over.
    void changeWhole(const QString& name, const Project& next);

    /// A change that is still in hand: shown with all its answers, one step once it is committed.
    void begin(const QString& name);
    /// Shows the change as far as it went. With up to kLinesAtOnce lines the answers are there at once; with more they
    /// are worked out off the window's thread and follow. Until then everything shown, the project too, is what it was.
    void preview(const Project& next);
    void commit();
    void abandon();
    bool isInHand() const { return m_inHand; }
    /// The project and its lines before the change in hand, or as they are.
    const Project& before() const { return m_inHand ? m_before->project : project(); }
    const Solved& solvedBefore() const { return m_inHand ? m_before->solved : solved(); }
    static constexpr std::size_t kLinesAtOnce = 16;

    QString undoName() const;  ///< "" where there is nothing to undo
    QString redoName() const;
    void undo();
    void redo();

    /// An id no line of this sheet ever had.
    LineId freshLineId() const;
    /// The highest number of a line's id this sheet ever had (moving.h, nextLineId).
    int highestLine() const { return m_highestLine; }

    /// Where the panel is cut for a side view. Not part of the project.
    const CuttingLine& cut(CutDirection direction) const {
        return direction == CutDirection::Level ? m_levelCut : m_uprightCut;
    }
    /// True where its side view stands on the sheet.
    bool isCutShown(CutDirection direction) const {
        return direction == CutDirection::Level ? m_levelCutShown : m_uprightCutShown;
    }
    void showCuts(bool level, bool upright);
    /// Moves the cut of that direction; kept on the panel.
    void moveCut(const CuttingLine& to);

Q_SIGNALS:
    void changed();
    void opened();
    void cutMoved();  ///< or shown, or hidden
    /// One sentence about what a change did beyond what was asked for.
    void told(const QString& sentence);

private:
    struct Step {
        QString name;
        Project before;
        Project after;
    };

    void show(const AnswersPtr& answers);
    void takeFlex(const AnswersPtr& answers);
    void reset(const Project& project, const QString& path);
    void record(const QString& name, const Project& before);
    void putCut(const CuttingLine& to);
    void tellVanished(const Answers& before);

    AnswersPtr m_shown;
    QTimer m_rest;              // since the last change
    AnswersPtr m_askedFlexOf;
    Answerer m_flexer;
    Answerer m_answerer;
    std::optional<Project> m_saved;
    QString m_path;
    std::vector<Step> m_steps;
    std::size_t m_done = 0;  // steps before this one stand
    bool m_inHand = false;
    QString m_handName;
    AnswersPtr m_before;
    int m_highestLine = 0;
    CuttingLine m_levelCut;
    CuttingLine m_uprightCut{CutDirection::Upright, 0};
    bool m_levelCutShown = true;
    bool m_uprightCutShown = false;
};

}  // namespace kerfwall
