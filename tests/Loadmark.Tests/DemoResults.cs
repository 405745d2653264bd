using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;

namespace Loadmark.Tests;

/// <summary>Results of checks, made by hand to show every part of an answer.</summary>
internal static class DemoResults
{
    public static CheckResult Clean => Of("Rehearsal board", [],
        [Outlet("brick/1", 9, 0.15m, 0.012m, 0.012m, "drive-3"), Outlet("brick/2", 9, 0.15m, 0m, 0m)]);

    public static CheckResult Pit => Of("Pit board, bass chair",
        [
            Finding(RuleId.OverVoltage, Severity.Harm, ["delay-2", "brick/5"],
                "The outlet is set to 18 V and delay-2 takes 9 V at most. It is likely to be damaged as soon as it is plugged in.",
                "18 V > 1.10 × 9 V = 9.9 V", "Set brick/5 to 9 V."),
            Finding(RuleId.StartOverload, Severity.Fails, ["wall/1", "chorus-1", "looper-1"],
                "While they start, the loads on wall/1 ask for more than it can give.",
                "45 mA + 620 mA = 665 mA > 500 mA", "Feed looper-1 from an outlet of its own, of 700 mA or more."),
            Finding(RuleId.ReturnNotItsOwn, Severity.Noise, ["fuzz-1", "drive-3"], "fuzz-1 needs an isolated outlet and shares the return of brick."),
            Finding(RuleId.ThinHeadroom, Severity.Margin, ["brick/4"], "Less than 10 % of the limit stays free.", "0.9 × 150 mA = 135 mA < 141 mA"),
            Finding(RuleId.FigureDerived, Severity.Note, ["wall"], "The limit is worked out from the watts printed.", "45 W ÷ 9 V = 5 A"),
        ],
        [
            Outlet("brick/1", 9, 0.15m, 0.012m, 0.012m, "drive-3"),
            Outlet("brick/2", 9, 0.15m, 0.06m, 0.09m, "tuner-1"),
            Outlet("brick/3", 9, 0.15m, null, null, "phaser-2"),
            Outlet("brick/4", 9, 0.15m, 0.141m, 0.141m, "fuzz-1", "compressor-1", "buffer-1", "equaliser-2"),
            Outlet("brick/5", 18, 0.25m, 0.21m, 0.52m, "delay-2"),
            Outlet("brick/6", 9, 0.15m, 0m, 0m),
            Outlet("brick/7", 9, 0.15m, 0m, 0m),
            Outlet("brick/8", 9, 0.15m, 0m, 0m),
            Outlet("wall/1", 9, 0.5m, 0.53m, 0.665m, "chorus-1", "looper-1"),
            Outlet("bank/A", null, null, 0.045m, 0.045m, "chorus-2"),
        ],
        [new Untold(RuleId.StartOverload, ["phaser-2", "brick/3"], "phaser-2 gives no current and its kind has no usual one.")],
        isDefault: false);

    public static CheckResult Quiet => Of("Fly rig", [Finding(RuleId.ThinHeadroom, Severity.Margin, ["brick/1"], "Little stays free.")],
        [Outlet("brick/1", 9, 0.1m, 0.095m, 0.095m, "delay-9")]);

    /// <summary>40 loads over six supplies.</summary>
    public static CheckResult Festival
    {
        get
        {
            var outlets = new List<OutletLoading>();
            var load = 1;
            for (var supply = 1; supply <= 6; supply++)
            {
                for (var outlet = 1; outlet <= 6; outlet++)
                {
                    var tags = Enumerable.Range(0, 1 + ((supply + outlet) % 4 == 0 ? 1 : 0)).Select(_ => $"effect-{load++:00}").ToArray();
                    var used = load <= 41;
                    var run = 0.02m * outlet * tags.Length;
                    outlets.Add(used
                        ? Outlet($"riser-{supply}/{outlet}", outlet == 6 ? 12 : 9, 0.1m * outlet, run, run * 1.5m, tags)
                        : Outlet($"riser-{supply}/{outlet}", 9, 0.5m, 0m, 0m));
                }
            }

            return Of("Festival rig, main stage", [], outlets);
        }
    }

    public static CheckResult WithSeverity(Severity severity, string name) =>
        Of(name, severity is Severity.Good or Severity.Open ? [] : [Finding(RuleId.Unfed, severity, ["delay-2"], "Nothing feeds it.")], []) with
        {
            NothingIsFed = severity == Severity.Open,
        };

    /// <summary>Names that try to drive the terminal, to be taken as markup, and to break JSON.</summary>
    public static CheckResult Hostile => Of("[red]Pit[/] \u001b[2J\u001b]0;owned\u0007 \u202Etxt\u009B31m \"q\"\\ \ud800",
        [Finding(RuleId.Unfed, Severity.Fails, ["[bold]\r\ndrive-3\u001b[31m"], "Nothing feeds [link=x]it[/]\u0000.", "[0] {1}", "\u001b[8mhidden")],
        [Outlet("[a]/\u001bb", 9, 0.1m, 0.05m, 0.05m, "\u001b[5mX[/]")]);

    private static CheckResult Of(
        string rig, IEnumerable<Finding> findings, IEnumerable<OutletLoading> outlets, IEnumerable<Untold>? untold = null, bool isDefault = true)
    {
        ValueList<Finding> list = [.. findings];
        return new CheckResult
        {
            Rig = rig,
            NothingIsFed = false,
            Findings = list,
            Untold = [.. untold ?? []],
            Outlets = [.. outlets],
            Headroom = 0.1m,
            HeadroomIsDefault = isDefault,
        };
    }

    private static Finding Finding(
        RuleId rule, Severity severity, ValueList<string> subjects, string message, string working = "", string remedy = "") => new()
        {
            Rule = rule,
            Severity = severity,
            Subjects = subjects,
            Message = message,
            Working = working,
            Remedy = remedy,
            Source = "common practice, no source",
        };

    private static OutletLoading Outlet(string outlet, decimal? volts, decimal? limit, decimal? run, decimal? start, params string[] loads)
    {
        var slash = outlet.IndexOf('/', StringComparison.Ordinal);
        return new OutletLoading(
            new OutletRef(outlet[..slash], outlet[(slash + 1)..]),
            volts is { } v ? new Volts(v) : null,
            limit is { } l ? new Amps(l) : null,
            run is { } r ? new Amps(r) : null,
            start is { } s ? new Amps(s) : null,
            [.. loads]);
    }
}
