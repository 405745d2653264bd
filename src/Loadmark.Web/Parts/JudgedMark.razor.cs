using Loadmark.Core.Acceptance;
using Loadmark.Core.Checks;
using Loadmark.Web.Texts;
using Loadmark.Workshop.Accepting;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>What came of a reading, or of all of them.</summary>
public sealed partial class JudgedMark : ComponentBase
{
    /// <summary>What came of all readings; null where it is one.</summary>
    [Parameter] public AcceptanceVerdict? Verdict { get; set; }

    /// <summary>What came of one reading; null where it was not measured.</summary>
    [Parameter] public Conformity? Judged { get; set; }

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    private Severity Severity => (Verdict, Judged) switch
    {
        (AcceptanceVerdict.Accepted, _) or (null, Conformity.Pass) => Severity.Good,
        (AcceptanceVerdict.Refused, _) or (null, Conformity.Fail) => Severity.Harm,
        (null, Conformity.NotSure) => Severity.Unsure,
        _ => Severity.Open,
    };

    private string Word => (Verdict, Judged) switch
    {
        (AcceptanceVerdict.Accepted, _) => T["accepted"],
        (AcceptanceVerdict.Refused, _) => T["refused"],
        (AcceptanceVerdict.Open, _) => T["not proven"],
        (_, Conformity.Pass) => T["pass"],
        (_, Conformity.Fail) => T["fail"],
        (_, Conformity.NotSure) => T["not sure"],
        _ => T["not measured"],
    };
}
