// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <expected>
#include <optional>
#include <vector>

#include "core/shop/from_wanted.h"

class QGridLayout;
class QLabel;
class QPushButton;

namespace kerfwall {

class LengthField;
class Session;

/// The size of a window wanted in the work, to be filled in on the job card; says at once what would be laid, or beside
/// the field in question why not. Laying it is one step.
class WantedForm : public QFrame {
    Q_OBJECT

public:
    explicit WantedForm(Session& session, QWidget* parent = nullptr);

    void focusFirst();

Q_SIGNALS:
    void closeAsked();
    void laid();  ///< the window stands on the sheet

protected:
    void showEvent(QShowEvent* event) override;

private:
    struct Row {
        WishPart part;
        LengthField* field;
        QLabel* trouble;              // under the field; hidden while there is none
        std::optional<double> typed;  // mm; none: empty
        bool isUnreadable = false;
    };
    void addRow(const QString& label, const QString& name, WishPart part, const QString& emptyMeans);
    void addFoot();
    Row& row(WishPart part);
    /// The wish as it is filled in; none while a length is missing or cannot be read.
    std::optional<WantedWindow> wish() const;
    void refresh();
    void tellRefusal(const WishRefusal& refusal);
    void tellLaid(const LaidWish& window);
    void offerSteering(const std::optional<WantedWindow>& wish);
    void lay(const Project& from, const QString& step);

    Session& m_session;
    QGridLayout* m_grid;
    std::vector<Row> m_rows;
    QLabel* m_answer = nullptr;
    QPushButton* m_lay = nullptr;
    QPushButton* m_other = nullptr;
    std::optional<Steering> m_offered;
};

}  // namespace kerfwall
