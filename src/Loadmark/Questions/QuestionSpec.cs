using Loadmark.Core.Texts;

namespace Loadmark.Questions;

/// <summary>A question that the program answers at the command line and over HTTP alike.</summary>
/// <param name="Name">The command's name, and the last part of the address.</param>
/// <param name="Text">The question in plain words, beginning with a small letter.</param>
internal sealed record QuestionSpec(string Name, string Text)
{
    /// <summary>The options that both take, in the order in which they are listed.</summary>
    public IReadOnlyList<OptionSpec> Options { get; init; } = [];

    /// <summary>The same options with those that mean something only beside one of them, each after it.</summary>
    public IEnumerable<OptionSpec> EveryOption => Every(Options);

    /// <summary>The question as a sentence that stands alone.</summary>
    public string Sentence => SentenceCase.Whole(Text);

    /// <summary>Options with those that mean something only beside one of them, each after it.</summary>
    /// <param name="options">The options.</param>
    public static IEnumerable<OptionSpec> Every(IEnumerable<OptionSpec> options)
    {
        foreach (var option in options)
        {
            yield return option;
            if (option.With is { } with)
                yield return with;
        }
    }
}
