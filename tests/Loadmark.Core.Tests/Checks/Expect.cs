using Loadmark.Core.Checks;

namespace Loadmark.Core.Tests.Checks;

/// <summary>What tests of rules expect of a result.</summary>
internal static class Expect
{
    /// <summary>The rule is broken exactly once.</summary>
    public static Finding Breaks(CheckResult result, string rule)
    {
        var finding = Assert.Single(result.Findings, finding => finding.Rule == rule);
        Assert.True(result.Verdict >= finding.Severity);
        return finding;
    }

    /// <summary>The rule is broken exactly once, with this working.</summary>
    public static Finding Breaks(CheckResult result, string rule, string working)
    {
        var finding = Breaks(result, rule);
        Assert.Equal(working, finding.Working);
        return finding;
    }

    /// <summary>The rule is not broken.</summary>
    public static void Keeps(CheckResult result, params string[] rules)
    {
        foreach (var rule in rules)
            Assert.DoesNotContain(result.Findings, finding => finding.Rule == rule);
    }

    /// <summary>The rig has no finding at all and leaves nothing untold.</summary>
    public static void Good(CheckResult result)
    {
        Assert.Empty(result.Findings);
        Assert.Empty(result.Untold);
        Assert.Equal(Severity.Good, result.Verdict);
    }

    /// <summary>Nothing is plugged in, and nothing is found or left untold.</summary>
    public static void Open(CheckResult result)
    {
        Assert.Empty(result.Findings);
        Assert.Empty(result.Untold);
        Assert.Equal(Severity.Open, result.Verdict);
        Assert.True(result.IsRefused);
    }

    /// <summary>The rule speaks exactly once, with this severity, and the message mentions <paramref name="words"/>.</summary>
    public static Finding Says(CheckResult result, string rule, Severity severity, string words)
    {
        var finding = Breaks(result, rule);
        Assert.Equal(severity, finding.Severity);
        Assert.Contains(words, finding.Message, StringComparison.Ordinal);
        Assert.NotEmpty(finding.Working);
        Assert.NotEmpty(finding.Remedy);
        return finding;
    }

    /// <summary>The rule lists exactly one thing it cannot tell, which mentions <paramref name="words"/>.</summary>
    public static Untold CannotTell(CheckResult result, string rule, string words)
    {
        var untold = Assert.Single(result.Untold, untold => untold.Rule == rule);
        Assert.Contains(words, untold.Because, StringComparison.Ordinal);
        Assert.NotEmpty(untold.Subjects);
        return untold;
    }

    /// <summary>The rule lists nothing it cannot tell.</summary>
    public static void CanTell(CheckResult result, string rule) => Assert.DoesNotContain(result.Untold, untold => untold.Rule == rule);
}
