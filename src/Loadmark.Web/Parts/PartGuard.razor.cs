using Loadmark.Web.RequestIds;
using Loadmark.Web.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;
using Microsoft.Extensions.Logging;

namespace Loadmark.Web.Parts;

/// <summary>
/// Keeps a fault in one part of the page from taking the others along: says what stopped, and shows the part again when asked.
/// </summary>
public sealed partial class PartGuard : ComponentBase
{
    private int _tries;
    private Exception? _told;

    /// <summary>What stopped, in a word or two.</summary>
    [Parameter, EditorRequired] public string Name { get; set; } = "";

    /// <summary>What is shown.</summary>
    [Parameter] public RenderFragment? ChildContent { get; set; }

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;
    [Inject] private PageRequestId RequestId { get; set; } = null!;
    [Inject] private ILogger<PartGuard> Log { get; set; } = null!;

    /// <summary>A new boundary: the old one would stay empty where the part fails again.</summary>
    private void Recover() => _tries++;

    private void Tell(Exception fault)
    {
        if (_told == fault)
            return;
        _told = fault;
        FaultLog.PartStopped(Log, Name, fault);
    }
}
