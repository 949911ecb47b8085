// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/remedy_search.h"

#include "ui/session.h"

namespace kerfwall {

RemedySearch::RemedySearch(QObject* parent) : QObject(parent) { m_thread.setMaxThreadCount(1); }

RemedySearch::~RemedySearch() {
    forget();
    m_thread.waitForDone();
}

void RemedySearch::ask(const Project& project, const Solved& solved, const Finding& finding) {
    const int number = ++m_newest;
    if (project.lines.size() <= Session::kLinesAtOnce) {
        Q_EMIT found(remedies(project, solved, finding));
        return;
    }
    m_thread.start([this, number, project, solved, finding] {
        if (number != m_newest) return;
        std::vector<Remedy> all = remedies(project, solved, finding);
        const auto give = [this, number, all = std::move(all)] {
            if (number == m_newest) Q_EMIT found(all);
        };
        QMetaObject::invokeMethod(this, give, Qt::QueuedConnection);
    });
}

}  // namespace kerfwall
