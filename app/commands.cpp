// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands.h"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <string>

#include "app/project_file.h"
#include "core/drawing/sheets.h"
#include "core/says/length_text.h"
#include "core/shop/finding.h"
#include "core/shop/order_of_work.h"
#include "core/shop/report_text.h"
#include "ui/papers.h"

namespace kerfwall {

namespace {

Exit higher(Exit a, Exit b) { return std::max(a, b); }

Exit print(const std::string& text) {
    const bool written = std::fwrite(text.data(), 1, text.size(), stdout) == text.size();
    if (written && std::fflush(stdout) == 0) {
        return Exit::Done;
    }
    complain(QStringLiteral("standard output: could not be written (%1).")
                 .arg(QString::fromLocal8Bit(std::strerror(errno))));
    return Exit::NotWritten;
}

Exit refuse(const QString& line) {
    complain(line);
    return Exit::Refused;
}

std::string severityWord(Severity severity) {
    return severity == Severity::Stop ? "stop" : severity == Severity::Care ? "care" : "note";
}

Exit exitFor(const std::vector<Finding>& all) {
    const bool stops =
        std::ranges::any_of(all, [](const Finding& f) { return f.severity == Severity::Stop; });
    return stops ? Exit::Stop : Exit::Done;
}

std::string placeText(const Finding& finding, Units units) {
    if (!finding.at) {
        return {};
    }
    return " at (" + lengthText(finding.at->x, units) + ", " + lengthText(finding.at->y, units) + ")";
}

std::string findingLine(const std::string& file, const Finding& finding, Units units) {
    const QString text = QString::fromStdString(severityWord(finding.severity) + " " + finding.code +
                                                placeText(finding, units) + ": " + finding.text);
    return file + ": " + onOneLine(text).toStdString() + "\n";
}

std::string countLine(const std::string& file, const std::vector<Finding>& all) {
    std::string line =
        file + ": " + std::to_string(all.size()) + (all.size() == 1 ? " finding" : " findings");
    std::string sign = ": ";
    for (const Severity severity : {Severity::Stop, Severity::Care, Severity::Note}) {
        line += sign + std::to_string(std::ranges::count(all, severity, &Finding::severity)) + " " +
                severityWord(severity);
        sign = ", ";
    }
    return line + "\n";
}

Exit checkFile(const QString& file) {
    const auto opened = openProject(file);
    if (!opened) {
        return refuse(opened.error());
    }
    const std::vector<Finding> all = findings(opened->project, opened->solved);
    const std::string name = onOneLine(file).toStdString();
    std::string text;
    for (const Finding& finding : all) {
        text += findingLine(name, finding, opened->project.units);
    }
    return higher(print(text + countLine(name, all)), exitFor(all));
}

Exit check(const QStringList& files) {
    Exit result = Exit::Done;
    for (const QString& file : files) {
        result = higher(result, checkFile(file));
    }
    return result;
}

Exit report(const QString& file) {
    const auto opened = openProject(file);
    if (!opened) {
        return refuse(opened.error());
    }
    const auto& [project, solved] = *opened;
    const std::vector<Finding> all = findings(project, solved);
    return higher(print(reportText(project, solved, all, plan(project, solved))), exitFor(all));
}

Exit publish(const Request& request) {
    const QString file = request.files.constFirst();
    const auto opened = openProject(file);
    if (!opened) {
        return refuse(opened.error());
    }
    const auto& [project, solved] = *opened;
    const bool ownPaper = request.paper.isEmpty();
    const auto paper =
        paperOf(ownPaper ? project.printing.paper : request.paper.toStdString(), project.panel);
    if (!paper) {
        return refuse(
            onOneLine(QStringLiteral("%1: %2: %3")
                          .arg(file, ownPaper ? QStringLiteral("/printing/paper") : QStringLiteral("--paper"),
                               QString::fromStdString(paper.error()))));
    }
    const std::vector<Finding> all = findings(project, solved);
    const auto published = publishPapers(project, solved, all, plan(project, solved), request.to, *paper);
    if (!published) {
        complain(onOneLine(request.to + QStringLiteral(": ") + published.error()));
        return Exit::NotWritten;
    }
    return exitFor(all);
}

}  // namespace

Exit runCommand(const Request& request) {
    switch (request.job) {
        case Job::Check:
            return check(request.files);
        case Job::Report:
            return report(request.files.constFirst());
        case Job::Publish:
            return publish(request);
        case Job::Version:
            return print("kerfwall " KERFWALL_VERSION "\n");
        case Job::Help:
        case Job::Window:
            break;
    }
    return print(helpText().toStdString());
}

void complain(const QString& line) {
    std::fputs((QStringLiteral("kerfwall: ") + onOneLine(line) + QLatin1Char('\n')).toUtf8().constData(),
               stderr);
}

}  // namespace kerfwall
