using System.Collections.Immutable;
using Loadmark.Core.Rigs;
using Loadmark.Files.Editing;
using Loadmark.Files.Errors;
using Loadmark.Files.Parsing;
using Loadmark.Files.Trees;
using Loadmark.Files.Writing;

namespace Loadmark.Files;

/// <summary>Changes the text of rig files and leaves comments, order and spacing as they are.</summary>
public static class RigFileEditor
{
    /// <summary>
    /// Replaces the wiring, or adds it where there is none. Nothing outside the value of <c>wired</c> changes; comments
    /// between the old feeds go with them. Works for block YAML, flow YAML and JSON, and keeps the line ends.
    /// </summary>
    /// <param name="text">The text of a rig file that can be read.</param>
    /// <param name="wired">The new wiring, of outlets, leads and loads that the rig has.</param>
    /// <param name="library">The gear that the file may take <c>from: library</c>; null where there is no library, and then such a file is
    /// refused.</param>
    /// <returns>The new text. It reads as the same rig with the new wiring.</returns>
    /// <exception cref="ArgumentException">The text is not a readable rig file.</exception>
    /// <exception cref="InvalidOperationException">
    /// The wiring does not fit the rig, or the text is written in a way that cannot be edited safely.
    /// </exception>
    public static string ReplaceWiring(string text, ValueList<Feed> wired, IGearLookup? library = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        var before = RigFileReader.Read(text, "rig", library);
        if (before.Rig is null)
            throw new ArgumentException($"The text is not a readable rig file. {before.Errors[0]}", nameof(text));

        var mark = text.StartsWith('\uFEFF') ? "\uFEFF" : "";
        var edited = mark + WiringEdit.Apply(text[mark.Length..], wired);
        var after = RigFileReader.Read(edited, "rig", library);
        if (after.Rig is null)
            throw new InvalidOperationException($"The new wiring does not fit this rig. {after.Errors[0].Message}");
        if (after.Rig != before.Rig with { Wired = wired })
            throw new InvalidOperationException(
                "This file is written in a way that cannot be edited without changing more than the wiring; save the rig anew instead.");
        return edited;
    }

    /// <summary>
    /// Changes a text so that it reads as a rig. Only what differs is touched: entries are added in their place, removed, moved
    /// and renamed, and of an entry that stays only the keys that differ. Spelling, order of keys, comments, spacing and line
    /// ends of all else stay. Works for block YAML, flow YAML and JSON.
    /// </summary>
    /// <param name="text">The text of a rig file. One that cannot be read, such as an empty one, is written anew.</param>
    /// <param name="rig">What it is to say.</param>
    /// <returns>
    /// The new text, the same where nothing differs. It has been read and found to be the rig. Where a small change is not
    /// possible, a larger piece is written anew, at last the whole file.
    /// </returns>
    /// <exception cref="ArgumentException">The rig is one that no rig file holds (see <see cref="RigFileWriter.Write"/>).</exception>
    public static RigTextUpdate Update(string text, Rig rig)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(rig);
        rig = RigGear.Normalise(rig);
        var library = new RigGear(rig);
        var before = RigFileReader.Read(text, "rig", library).Rig;
        if (before == rig)
            return new RigTextUpdate(text, CommentsKept: true);
        if (before is null)
            return new RigTextUpdate(RigFileWriter.Write(rig), CommentsKept: false);

        var mark = text.StartsWith('\uFEFF') ? "\uFEFF" : "";
        var plain = text[mark.Length..];
        var root = (MappingNode)TreeReader.Read(plain, new ErrorList("rig"))!;
        if (Edit(plain, root, before, rig, library) is { } update)
            return update with { Text = mark + update.Text };
        var full = FullOutletNames.Spell(plain, root, before);
        if (full != plain && TreeReader.Read(full, new ErrorList("rig")) is MappingNode fullRoot
            && Edit(full, fullRoot, before, rig, library) is { } other)
            return other with { Text = mark + other.Text };

        var anew = RigFileWriter.Write(rig);
        return new RigTextUpdate(mark + anew, CommentList.HoldsAll(anew, plain));
    }

    /// <summary>The text with as little of it written anew as can be; null where not even whole sections are enough.</summary>
    private static RigTextUpdate? Edit(string plain, MappingNode root, Rig before, Rig rig, RigGear library)
    {
        var (old, wanted, listed) = (TreeBuilder.TreeOf(before), TreeBuilder.TreeOf(rig), new ListedOutlets(before, rig));
        foreach (var scope in (ReadOnlySpan<EditScope>)[EditScope.Keys, EditScope.Entries, EditScope.Sections])
        {
            if (TreeEdit.Apply(plain, root, old, wanted, listed, scope) is { } edited
                && RigFileReader.Read(edited, "rig", library).Rig == rig)
                return new RigTextUpdate(edited, scope == EditScope.Keys || CommentList.HoldsAll(edited, plain));
        }

        return null;
    }

    /// <summary>
    /// The text of a rig that two edits of one text were brought together in: written over one of the two, so that comments and order of it
    /// stay, and over the one that loses no comment where there is such a one.
    /// </summary>
    /// <param name="before">The text that both began from.</param>
    /// <param name="ours">The one text.</param>
    /// <param name="theirs">The other; it is preferred.</param>
    /// <param name="merged">What the text is to say.</param>
    /// <returns>The text, and whether every comment is there that either side kept or added.</returns>
    /// <exception cref="ArgumentException">The rig is one that no rig file holds (see <see cref="RigFileWriter.Write"/>).</exception>
    public static RigTextUpdate Merge(string before, string ours, string theirs, Rig merged)
    {
        var overTheirs = Update(theirs, merged);
        if (overTheirs.CommentsKept && CommentList.HoldsNew(overTheirs.Text, ours, before))
            return overTheirs;
        var overOurs = Update(ours, merged);
        return overOurs.CommentsKept && CommentList.HoldsNew(overOurs.Text, theirs, before)
            ? overOurs
            : overTheirs with { CommentsKept = false };
    }

    /// <summary>
    /// Writes into a text what it takes from the gear library, so that it says all of it by itself, such as for mailing. Comments, order
    /// and spacing of all else stay. A text that takes nothing from there comes back as it is.
    /// </summary>
    /// <param name="text">The text of a rig file.</param>
    /// <param name="library">The library.</param>
    /// <returns>The new text; or null and what keeps the text from being read.</returns>
    public static (RigTextUpdate? Update, ImmutableArray<FileError> Errors) WriteOut(string text, IGearLookup library)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(library);
        var reading = RigFileReader.Read(text, "rig", library);
        return reading.Rig is { } rig ? (Update(text, rig.WithoutLibrary()), []) : (null, reading.Errors);
    }
}
