// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDateTime>
#include <QObject>
#include <QString>
#include <QTimer>
#include <vector>

#include "core/says/project.h"

namespace kerfwall {

class Session;

/// Work that was not saved when a program ended that could not ask.
struct LostWork {
    QString file;  ///< where it is kept
    QString path;  ///< of the template it belongs to; "" where it had none
    QDateTime when;
    Project project;
};

/// Keeps what is not saved beside the maker's files, a few seconds after each change, for the case that the program ends before it
/// can ask. What is saved, or given up when the window closes, is kept no more.
class KeptWork : public QObject {
    Q_OBJECT

public:
    /// Keeps it in that folder, which is made where it is not there.
    KeptWork(Session& session, const QString& folder, QObject* parent = nullptr);
    ~KeptWork() override;

    /// Writes it now.
    void keep();

private:
    void follow();

    Session& m_session;
    QString m_file;
    int m_lock = -1;  // held as long as this stands
    QTimer m_rest;
};

/// The folder where a maker's unsaved work is kept.
[[nodiscard]] QString keptWorkFolder();

/// Takes it away from where it is kept.
void forget(const LostWork& work);

/// What programs that run no more have left in a folder, the newest first. Files that cannot be read are no work.
[[nodiscard]] std::vector<LostWork> lostWorkIn(const QString& folder);

}  // namespace kerfwall
