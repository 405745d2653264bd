namespace Loadmark.Browser.Tests.House;

/// <summary>A hand on the mouse that counts what it does: every press of a button, and every text that is pasted.</summary>
/// <param name="page">The page under it.</param>
internal sealed class CountedHand(IPage page)
{
    /// <summary>How often a button was pressed.</summary>
    public int Clicks { get; private set; }

    /// <summary>How many texts were pasted.</summary>
    public int Pastes { get; private set; }

    /// <summary>Clicks what can be seen there.</summary>
    public async Task ClickAsync(ILocator target)
    {
        await target.ClickAsync();
        Clicks++;
    }

    /// <summary>Clicks into a field and pastes, all at once as a clipboard does.</summary>
    public async Task PasteAsync(ILocator field, string text)
    {
        await ClickAsync(field);
        await page.Keyboard.InsertTextAsync(text);
        Pastes++;
    }
}
