namespace Loadmark.Web.Views;

/// <summary>A text that is put into a field once: the same text given again is put in again.</summary>
/// <param name="text">The text.</param>
public sealed class GivenText(string text)
{
    /// <summary>The text.</summary>
    public string Text => text;
}
