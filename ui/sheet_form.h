// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <functional>
#include <optional>
#include <vector>

#include "core/says/project.h"

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;

namespace kerfwall {

class LengthField;
class Session;

/// A part of the project to be filled in, laid on the job card. Each entry is a step of its own.
class SheetForm : public QFrame {
    Q_OBJECT

public:
    SheetForm(const QString& title, Session& session, QWidget* parent = nullptr);

    struct LengthRow {
        QString label;
        QString objectName;
        QString step;  ///< what undo calls it
        double low = 0;
        double high = 0;
        QString range;  ///< the sentence for a value outside
        bool mayBeEmpty = false;
        QString emptyMeans;  ///< shown in the empty field
        std::function<std::optional<double>(const Project&)> read;
        std::function<void(Project&, std::optional<double>)> write;
    };
    struct ChoiceRow {
        QString label;
        QString objectName;
        QString step;
        std::function<QStringList(const Project&)> options;
        std::function<int(const Project&)> read;
        std::function<void(Project&, int)> write;
    };

    void addLength(const LengthRow& row, const std::function<bool(const Project&)>& isShown = {});
    void addChoice(const ChoiceRow& row);
    void addTitle();
    void focusFirst();
    /// Shows what the project has now.
    void refresh();

Q_SIGNALS:
    void closeAsked();

private:
    struct Length {
        LengthRow row;
        LengthField* field;
        QLabel* label;
        std::function<bool(const Project&)> isShown;
    };
    struct Choice {
        ChoiceRow row;
        QComboBox* box;
    };
    void addRow(QLabel* label, QWidget* field);
    void enter(const LengthRow& row, std::optional<double> value);

    Session& m_session;
    QGridLayout* m_grid;
    QLabel* m_trouble;
    QLineEdit* m_title = nullptr;
    std::vector<Length> m_lengths;
    std::vector<Choice> m_choices;
};

/// Size, thickness, kerf depth and true edges of the panel; the sheet's title.
[[nodiscard]] SheetForm* makePanelForm(Session& session, QWidget* parent);

/// The trimming bit, and how the finished template steers the cutter.
[[nodiscard]] SheetForm* makeUseForm(Session& session, QWidget* parent);

}  // namespace kerfwall
