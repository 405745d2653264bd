using Loadmark.Core.Checks;
using Loadmark.Core.OpenQuestions;
using Loadmark.Core.Rigs;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Loadmark.Workshop.Solves;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>What is worth asking about the rig: each answer is a button that states it in the rig file.</summary>
public sealed partial class QuestionsPart : ComponentBase
{
    /// <summary>Answers of one question that are shown at once.</summary>
    private const int MostAnswers = 6;

    /// <summary>Questions that are shown at once.</summary>
    private const int MostQuestions = 8;

    private readonly LatestOnly<FoundQuestions> _search = new();
    private IReadOnlyList<OpenQuestion> _questions = [];
    private int _leftOut;
    private Rig? _seen;
    private ElementReference _title;

    /// <summary>Whether a question was answered here, so that the heading stays for the focus when the last one goes.</summary>
    private bool _answered;

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <inheritdoc/>
    public void Dispose() => _search.Dispose();

    /// <summary>Each answer of each question is judged by the rules: aside, so that the page goes on.</summary>
    protected override async Task OnParametersSetAsync()
    {
        if (ReferenceEquals(_seen, View.Rig))
            return;
        var rig = _seen = View.Rig;
        if (await _search.RunAsync(stop => QuestionSearch.Search(rig, stop)) is { } found)
            (_questions, _leftOut) = (found.Questions, found.LeftOut);
    }

    private async Task AnswerAsync(OpenQuestion question, PossibleAnswer answer)
    {
        _answered = true;
        await View.Session.EditAsync($"{question.Key} of {Phrases.List(question.About)}: {answer.Words}", answer.Apply(View.Rig));
        await _title.FocusAsync();
    }
}
