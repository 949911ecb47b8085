// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/arguments.h"

#include <QCommandLineParser>

namespace kerfwall {

namespace {

using Refused = std::unexpected<QString>;

constexpr QLatin1StringView kTo("to");
constexpr QLatin1StringView kPaper("paper");

Job jobOf(const QString& word) {
    if (word == QLatin1StringView("check")) {
        return Job::Check;
    }
    if (word == QLatin1StringView("report")) {
        return Job::Report;
    }
    return word == QLatin1StringView("publish") ? Job::Publish : Job::Window;
}

QString wrongFiles(const Request& request) {
    const qsizetype count = request.files.size();
    switch (request.job) {
        case Job::Check:
            return count < 1 ? QStringLiteral("check needs at least one project file.") : QString();
        case Job::Report:
            return count != 1 ? QStringLiteral("report needs exactly one project file.") : QString();
        case Job::Publish:
            return count != 1 ? QStringLiteral("publish needs exactly one project file.") : QString();
        case Job::Window:
            return count > 1 ? QStringLiteral(
                                   "the window opens one project file; the commands are check, report "
                                   "and publish.")
                             : QString();
        case Job::Help:
        case Job::Version:
            break;
    }
    return {};
}

QString wrongOptions(const Request& request, const QCommandLineParser& parser) {
    if (request.job == Job::Publish) {
        return request.to.isEmpty() ? QStringLiteral("publish needs --to and a directory.") : QString();
    }
    for (const QLatin1StringView option : {kTo, kPaper}) {
        if (parser.isSet(option)) {
            return QStringLiteral("--%1 belongs to publish only.").arg(option);
        }
    }
    return {};
}

}  // namespace

std::expected<Request, QString> readArguments(const QStringList& arguments) {
    QCommandLineParser parser;
    parser.addOption(QCommandLineOption(QStringList{QStringLiteral("h"), QStringLiteral("help")}));
    parser.addOption(QCommandLineOption(QStringList{QStringLiteral("v"), QStringLiteral("version")}));
    parser.addOption(QCommandLineOption(QString(kTo), QString(), QStringLiteral("DIR")));
    parser.addOption(QCommandLineOption(QString(kPaper), QString(), QStringLiteral("NAME")));
    const bool parsed = parser.parse(QStringList{QStringLiteral("kerfwall")} + arguments);
    if (parser.isSet(QStringLiteral("help"))) {
        return Request{Job::Help, {}, {}, {}};
    }
    if (parser.isSet(QStringLiteral("version"))) {
        return Request{Job::Version, {}, {}, {}};
    }
    if (!parsed) {
        return Refused(parser.errorText());
    }
    Request request{Job::Window, parser.positionalArguments(), parser.value(kTo), parser.value(kPaper).toLower()};
    if (!request.files.isEmpty()) {
        request.job = jobOf(request.files.constFirst());
        if (request.job != Job::Window) {
            request.files.removeFirst();
        }
    }
    for (const QString& wrong : {wrongFiles(request), wrongOptions(request, parser)}) {
        if (!wrong.isEmpty()) {
            return Refused(wrong);
        }
    }
    return request;
}

QString helpText() {
    return QStringLiteral(
        "Kerfwall draws and plans router templates made with saw kerfs.\n"
        "\n"
        "  kerfwall [FILE]                                open the window, with FILE in it\n"
        "  kerfwall check FILE...                         print each file's findings, then a count\n"
        "  kerfwall report FILE                           print the whole report as JSON\n"
        "  kerfwall publish FILE --to DIR [--paper NAME]  write the maker's papers into DIR\n"
        "  kerfwall --help | --version\n"
        "\n"
        "Papers: a4 a3 a2 a1 a0 letter tabloid ansi-c ansi-d ansi-e, panel (one sheet as large as\n"
        "the panel), or a roll by its width in mm, as in roll-610.\n"
        "Exit status: 0 done; 1 done, and some finding says stop; 2 the arguments or the file\n"
        "cannot be used; 3 the output could not be written.\n");
}

}  // namespace kerfwall
