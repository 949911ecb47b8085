// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QThreadPool>
#include <atomic>
#include <vector>

#include "core/shop/remedies.h"

namespace kerfwall {

/// Looks for what can be done about a finding: at once on a small sheet, off the window's thread on a large one.
class RemedySearch : public QObject {
    Q_OBJECT

public:
    explicit RemedySearch(QObject* parent = nullptr);
    ~RemedySearch() override;

    /// `found` follows, unless something newer is asked for.
    void ask(const Project& project, const Solved& solved, const Finding& finding);
    /// What was asked for is wanted no more.
    void forget() { ++m_newest; }

Q_SIGNALS:
    void found(const std::vector<kerfwall::Remedy>& remedies);

private:
    std::atomic<int> m_newest = 0;
    QThreadPool m_thread;  // one at a time
};

}  // namespace kerfwall
