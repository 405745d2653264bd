using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Paper;

/// <summary>A column of a table.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Anchor">Where its texts stand: figures at the end, so that units are under one another.</param>
/// <param name="LeastWidth">The width it has at least, px: room to write in.</param>
public sealed record TableColumn(string Title, TextAnchor Anchor = TextAnchor.Start, double LeastWidth = 0);
